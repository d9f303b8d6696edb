"use strict";
/* Asks for the beds every few seconds, shows what changed, and says so when it no longer knows. */

(() => {
  const EVERY_MS = 15000;
  const at = (id) => document.getElementById(id);
  const cards = at("cards"), news = at("news"), stale = at("stale");
  let tag = "", since = at("as-of").textContent;

  const urgent = (root) =>
    new Set(Array.from(root.querySelectorAll('[data-need="urgent"]'), (each) => each.dataset.bed));

  const parsed = (html) => new DOMParser().parseFromString(html, "text/html").body;

  const show = (fresh) => {
    const before = urgent(cards), focused = document.activeElement?.id;
    cards.replaceChildren(...fresh.childNodes);
    if (focused) at(focused)?.focus({ preventScroll: true });
    const risen = [...urgent(cards)].filter((bed) => !before.has(bed));
    news.textContent = risen.length ? `Urgent: bed ${risen.join(", bed ")}.` : "";
  };

  const current = () => {
    stale.hidden = true;
    stale.removeAttribute("role");
    stale.textContent = "";
  };

  const outdated = (why) => {
    if (!stale.hidden) return;
    stale.setAttribute("role", "alert");
    stale.hidden = false;
    stale.textContent = `Not up to date: ${why} ${since}`;
  };

  const ask = async () => {
    try {
      const response = await fetch(cards.dataset.from, {
        headers: tag ? { "If-None-Match": tag } : {},
        credentials: "same-origin",
        cache: "no-store",
      });
      if (response.status === 401) return outdated("you are signed out.");
      if (response.status === 200) {
        tag = response.headers.get("ETag") || "";
        show(parsed(await response.text()));
        since = at("as-of").textContent;
      } else if (response.status !== 304) {
        return outdated("there is no answer.");
      }
      return current();
    } catch {
      return outdated("there is no connection.");
    }
  };

  setInterval(() => { if (!document.hidden) ask(); }, EVERY_MS);
  document.addEventListener("visibilitychange", () => { if (!document.hidden) ask(); });
  window.addEventListener("online", ask);
})();
