"use strict";
/* Speech in and out, on this device only: where that cannot be had, there is neither button nor choice. */

const Voice = (() => {
  const LANGUAGE = "en-US";
  const MOST = 5;

  /* Whether this browser can recognise speech without sending audio anywhere. */
  const listens = async () => {
    const Recognition = window.SpeechRecognition;
    if (!Recognition || !("processLocally" in Recognition.prototype) || !Recognition.available) return false;
    try {
      return (await Recognition.available({ langs: [LANGUAGE], processLocally: true })) === "available";
    } catch {
      return false;
    }
  };

  const hypotheses = (result) =>
    Array.from(result, (each) => ({
      text: each.transcript.trim(),
      confidence: Math.min(1, Math.max(0, each.confidence || 0)),
    })).filter((each) => each.text);

  /* Starts to listen. `heard(text, alternatives)` is called with what was said, `ended(error)` at the end. */
  const listen = (heard, ended) => {
    const recognition = new window.SpeechRecognition();
    recognition.processLocally = true;
    recognition.lang = LANGUAGE;
    recognition.maxAlternatives = MOST;
    recognition.continuous = false;
    recognition.interimResults = false;
    let error = "";
    recognition.onresult = (event) => {
      for (const result of Array.from(event.results).slice(event.resultIndex)) {
        const [best, ...others] = hypotheses(result);
        if (result.isFinal && best) heard(best.text, others);
      }
    };
    recognition.onerror = (event) => { error = event.error; };
    recognition.onend = () => ended(error);
    recognition.start();
    return recognition;
  };

  /* A voice of this device; one that is not would send the reply to its maker. */
  const localVoice = () =>
    window.speechSynthesis?.getVoices().find((each) => each.localService && each.lang.startsWith("en"));

  const speak = (words) => {
    const voice = localVoice();
    if (!voice) return;
    const said = new SpeechSynthesisUtterance(words);
    said.voice = voice;
    said.lang = voice.lang;
    window.speechSynthesis.cancel();
    window.speechSynthesis.speak(said);
  };

  /* Calls `found` once there is a voice of this device. */
  const whenSpeaking = (found) => {
    if (!window.speechSynthesis) return;
    const look = () => { if (localVoice()) found(); };
    look();
    window.speechSynthesis.addEventListener?.("voiceschanged", look);
  };

  return { listens, listen, speak, whenSpeaking };
})();
