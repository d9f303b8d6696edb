/* A power cut and a full disk, for LD_PRELOAD.
 *
 * SIGKILL alone cannot see a missing fsync, as the kernel keeps what was written. So after each successful
 * fsync or fdatasync of a file in POWER_FOLDER the file is copied to POWER_SHADOW: after the kill the shadow
 * is what a disk would hold. While the file POWER_FULL exists, writes in POWER_FOLDER find no space left.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#define REAL(name) ((__typeof__(&name))dlsym(RTLD_NEXT, #name))

static int is_ours(int fd, char *path) {
  const char *folder = getenv("POWER_FOLDER");
  char link[64];
  if (!folder) return 0;
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t length = readlink(link, path, PATH_MAX - 1);
  path[length > 0 ? length : 0] = 0;
  return strncmp(path, folder, strlen(folder)) == 0;
}

static int copied(int fd, int done) {
  char path[PATH_MAX], whole[2 * PATH_MAX], part[2 * PATH_MAX + 8], block[65536];
  const char *shadow = getenv("POWER_SHADOW");
  struct stat what;
  if (done || !shadow || !is_ours(fd, path) || fstat(fd, &what) || !S_ISREG(what.st_mode)) return done;
  snprintf(whole, sizeof whole, "%s/%s", shadow, strrchr(path, '/') + 1);
  snprintf(part, sizeof part, "%s.part", whole);
  int out = open(part, O_WRONLY | O_CREAT | O_TRUNC, 0600);
  ssize_t count;
  for (off_t at = 0; (count = pread(fd, block, sizeof block, at)) > 0; at += count)
    if (REAL(write)(out, block, count) != count) abort();
  close(out);
  return rename(part, whole);
}

static int is_full(int fd) {
  char path[PATH_MAX];
  const char *flag = getenv("POWER_FULL");
  if (!flag || access(flag, F_OK) || !is_ours(fd, path)) return 0;
  errno = ENOSPC;
  return 1;
}

int fsync(int fd) { return copied(fd, REAL(fsync)(fd)); }
int fdatasync(int fd) { return copied(fd, REAL(fdatasync)(fd)); }
ssize_t write(int fd, const void *b, size_t n) { return is_full(fd) ? -1 : REAL(write)(fd, b, n); }
ssize_t pwrite(int fd, const void *b, size_t n, off_t at) {
  return is_full(fd) ? -1 : REAL(pwrite)(fd, b, n, at);
}
ssize_t pwrite64(int fd, const void *b, size_t n, off64_t at) {
  return is_full(fd) ? -1 : REAL(pwrite64)(fd, b, n, at);
}
int ftruncate64(int fd, off64_t length) { return is_full(fd) ? -1 : REAL(ftruncate64)(fd, length); }

/* A journal that was deleted is not there after the cut either; SQLite syncs the folder, which holds no data. */
int unlink(const char *path) {
  const char *folder = getenv("POWER_FOLDER"), *shadow = getenv("POWER_SHADOW");
  char gone[2 * PATH_MAX];
  int done = REAL(unlink)(path);
  if (!done && folder && shadow && strncmp(path, folder, strlen(folder)) == 0) {
    snprintf(gone, sizeof gone, "%s/%s", shadow, strrchr(path, '/') + 1);
    REAL(unlink)(gone);
  }
  return done;
}
