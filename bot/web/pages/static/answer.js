"use strict";
/* An answer object as elements. Everything is text: nothing that was said or answered is ever read as markup. */

const Answer = (() => {
  const element = (tag, look, text) => {
    const made = document.createElement(tag);
    if (look) made.className = look;
    if (text !== undefined) made.textContent = text;
    return made;
  };

  /* A line, with an address of this very site in it as a link. */
  const withLinks = (made, line) => {
    for (const part of line.split(/(https?:\/\/\S+)/)) {
      if (part.startsWith(`${location.origin}/`)) {
        const link = element("a", "", "open the picture");
        link.href = part;
        link.target = "_blank";
        link.rel = "noopener";
        made.append(link);
      } else if (part) {
        made.append(part);
      }
    }
    return made;
  };

  /* The reply's lines; those that are urgent come together, and a screen reader says them at once. */
  const lines = (answer) => {
    const told = answer.reply.split("\n").filter((line) => line);
    const urgent = told.filter((line) => line.startsWith("URGENT"));
    const found = [];
    if (urgent.length) {
      const box = element("div", "urgent-lines");
      box.setAttribute("role", "alert");
      urgent.forEach((line) => box.append(element("p", "", `\u25B2 ${line}`)));
      found.push(box);
    }
    for (const line of told) {
      if (line.startsWith("CAUTION")) found.push(element("p", "caution-line", `\u25C6 ${line}`));
      else if (!line.startsWith("URGENT")) found.push(withLinks(element("p"), line));
    }
    return found;
  };

  /* What to send for a choice: with its bed, as several questions may be open, unless it is a number. */
  const words = (question, choice) =>
    question.bed && !/\d/.test(choice.say) ? `${question.bed} ${choice.say}` : choice.say;

  const question = (asked, answered) => {
    const group = element("fieldset", "asked");
    group.append(element("legend", "", asked.bed ? `Bed ${asked.bed}: answer` : "Answer"));
    const row = element("div");
    for (const choice of asked.choices) {
      const button = element("button", "", choice.say);
      button.type = "button";
      if (choice.label && choice.label !== choice.say) button.append(element("small", "", choice.label));
      button.addEventListener("click", () => {
        row.querySelectorAll("button").forEach((each) => { each.disabled = true; });
        answered(words(asked, choice));
      });
      row.append(button);
    }
    group.append(row);
    return group;
  };

  /* The whole answer; `answered` is called with what to send when a question's button is used. */
  const shown = (answer, answered) => {
    const turn = element("div", "turn reply");
    turn.append(...lines(answer));
    answer.questions.filter((each) => each.choices.length)
      .forEach((each) => turn.append(question(each, answered)));
    return turn;
  };

  return { element, shown };
})();
