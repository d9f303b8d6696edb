"use strict";
/* The conversation: sends what was typed, dictated or chosen, and shows the answer. */

(() => {
  const at = (id) => document.getElementById(id);
  const form = at("say"), text = at("text"), log = at("log"), state = at("state"), talk = at("talk"), aloud = at("aloud"), more = at("more");
  const { element, shown } = Answer;
  let waiting = 0;

  const newId = () =>
    Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, "0")).join("");

  const tell = (words) => { state.textContent = words; };

  /* A question's buttons may stand below what is seen: then there is a button that leads to them. */
  const below = (each) => each.getBoundingClientRect().bottom > log.getBoundingClientRect().bottom;

  const waits = () => Array.from(log.querySelectorAll(".asked button:enabled")).filter(below)[0];

  const look = () => {
    more.hidden = log.scrollHeight - log.scrollTop - log.clientHeight < 24;
    more.textContent = waits() ? "Answer below" : "More below";
  };

  more.addEventListener("click", () => {
    const next = waits() || log;
    next.focus({ preventScroll: true });
    log.scrollBy({ top: log.clientHeight * 0.8 });
  });
  log.addEventListener("scroll", look);
  window.addEventListener("resize", look);

  /* The whole of it is to be seen; of what is longer than the page, the beginning: there the urgent lines are. */
  const put = (turn) => {
    log.append(turn);
    turn.scrollIntoView({ block: turn.offsetHeight > log.clientHeight ? "start" : "end" });
    look();
  };

  const said = (message) => {
    const turn = element("div", "turn mine");
    turn.append(element("p", "", message.body.text));
    if (message.body.channel === "voice") turn.append(element("p", "how", "heard, as written here"));
    put(turn);
    return turn;
  };

  const problem = async (response) => {
    try {
      const told = await response.json();
      return [told.detail, ...(told.errors || []).map((each) => each.detail)].join(" ");
    } catch {
      return "There was no answer that can be read.";
    }
  };

  /* What was not sent can be sent again: under the same id, so that nothing is recorded twice. */
  const failed = (message, turn, why) => {
    turn.classList.add("failed");
    const note = element("div");
    note.setAttribute("role", "alert");
    note.append(element("p", "", `Not recorded as far as is known here. ${why}`));
    const again = element("button", "", "Send again");
    again.type = "button";
    again.addEventListener("click", () => {
      turn.classList.remove("failed");
      note.remove();
      post(message, turn);
    });
    note.append(again);
    turn.append(note);
    turn.scrollIntoView({ block: "end" });
  };

  const post = async (message, turn) => {
    waiting += 1;
    tell("Sending");
    let why = "There is no connection.";
    try {
      const response = await fetch(form.action, {
        method: "POST",
        headers: {
          "Content-Type": "application/json",
          "X-Page-Token": at("token").value,
          "X-Message-Id": message.id,
        },
        body: JSON.stringify(message.body),
        credentials: "same-origin",
      });
      if (response.ok) {
        const answer = await response.json();
        put(shown(answer, (words) => send(words)));
        if (aloud.checked) Voice.speak(answer.speech);
        why = "";
      } else {
        why = await problem(response);
      }
    } catch {
      /* The connection failed: `why` says so. */
    }
    waiting -= 1;
    tell(waiting ? "Sending" : "");
    if (why) failed(message, turn, why);
  };

  const send = (words, more = {}) => {
    const message = {
      id: newId(),
      body: { text: words, sent_at: new Date().toISOString().slice(0, 19) + "Z", ...more },
    };
    text.focus();
    return post(message, said(message));
  };

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const words = text.value.trim();
    if (!words) return;
    text.value = "";
    send(words);
  });

  /* Hold to talk: by pointer or key while it is held; a click alone (as assistive technology makes) starts or stops. */
  let recognition = null;

  const stop = () => { if (recognition) recognition.stop(); };

  const start = () => {
    if (recognition) return;
    talk.setAttribute("aria-pressed", "true");
    tell("Listening. Let go to send.");
    recognition = Voice.listen(
      (words, alternatives) => send(words, { channel: "voice", alternatives }),
      (error) => {
        recognition = null;
        talk.setAttribute("aria-pressed", "false");
        if (error) tell(error === "no-speech" ? "Nothing was heard." : "Listening failed. Type it instead.");
        else if (!waiting) tell("");
      },
    );
  };

  const isKey = (event) => event.key === " " || event.key === "Enter";
  let held = false;
  talk.addEventListener("pointerdown", (event) => {
    held = true;
    talk.setPointerCapture(event.pointerId);
    start();
  });
  for (const end of ["pointerup", "pointercancel"]) talk.addEventListener(end, stop);
  talk.addEventListener("keydown", (event) => {
    if (!isKey(event)) return;
    event.preventDefault();
    if (!event.repeat) start();
  });
  talk.addEventListener("keyup", (event) => {
    if (!isKey(event)) return;
    event.preventDefault();
    stop();
  });
  talk.addEventListener("click", () => {
    if (!held) (recognition ? stop : start)();
    held = false;
  });
  talk.addEventListener("contextmenu", (event) => event.preventDefault());

  Voice.listens().then((can) => { talk.hidden = !can; });
  Voice.whenSpeaking(() => { at("aloud-choice").hidden = false; });
  text.focus();
})();
