// The key that is ticked. Each box carries the plants on which it could be met; a plant of which a
// question is not answered in its lesson is never contradicted by it. A plant drops out when a tick
// contradicts it; one that may kill only when enough reliable questions of different kinds do.
"use strict";

(function () {
  const page = document.getElementById("key");
  const byId = (name) => document.getElementById(name);
  const enough = Number(page.dataset.enough);
  const plantsIn = (words) => new Set((words || "").split(" ").filter(Boolean).map(Number));

  const questions = [...page.querySelectorAll("[data-question]")].map((group) => ({
    number: Number(group.dataset.question),
    about: group.dataset.about,
    firm: "firm" in group.dataset,
    kind: group.dataset.kind,
    untold: plantsIn(group.dataset.untold),
    ticked: group.parentElement.querySelector(".ticked-here"),
    answers: [...group.querySelectorAll("input")].map((box) => ({
      box,
      words: box.parentElement.textContent.trim(),
      fits: plantsIn(box.dataset.fits),
      shows: plantsIn(box.dataset.shows),
    })),
  }));

  const plants = [...page.querySelectorAll("[data-plant]")].map((item) => ({
    item,
    number: Number(item.dataset.plant),
    name: item.dataset.name,
    grave: "grave" in item.dataset,
    harms: "harms" in item.dataset,
    beware: item.querySelector(".beware"),
    why: item.appendChild(element("ul", "why")),
  }));

  function element(name, kind, words) {
    const made = document.createElement(name);
    if (kind) made.className = kind;
    if (words) made.textContent = words;
    return made;
  }

  const seenOf = (question) => question.answers.filter((answer) => answer.box.checked);

  // `a, b or c`, as the numbered keys write it.
  function either(answers) {
    const words = answers.map((answer) => answer.words);
    if (words.length < 2) return words.join("");
    return words.slice(0, -1).join(", ") + " or " + words[words.length - 1];
  }

  function contradicts(question, seen, plant) {
    return !question.untold.has(plant.number) && !seen.some((a) => a.fits.has(plant.number));
  }

  function standing(plant, answered) {
    const against = answered.filter(({ question, seen }) => contradicts(question, seen, plant));
    const trusted = against.filter(({ question }) => question.firm);
    // Two marks of one kind are one look, and one mistake.
    const kinds = new Set(trusted.map(({ question }) => question.kind)).size;
    const out = plant.grave ? kinds >= enough : against.length > 0;
    return { plant, against, trusted: trusted.length, out };
  }

  function reason(plant, { question, seen }) {
    const told = question.answers.filter((answer) => answer.shows.has(plant.number));
    const doubt = question.firm ? "" : " (not sure by itself)";
    const words = `${question.about}: you ticked ${either(seen)}; recorded: ${either(told) || "something else"}${doubt}`;
    const item = element("li", "", words);
    item.dataset.against = question.number;
    return item;
  }

  // What is said of a plant that may kill and stays although something speaks against it.
  function staying({ trusted, against, out }) {
    if (out || !against.length) return [];
    const marks = against.length === 1 ? "One mark" : `${against.length} marks`;
    const words = trusted
      ? `${marks} against it: it stays until a second of another kind that can be trusted.`
      : `${marks} against it, not to be trusted alone: it stays.`;
    return [element("li", "stays", words)];
  }

  function place(one) {
    const { plant, against } = one;
    plant.why.replaceChildren(...staying(one), ...against.map((each) => reason(plant, each)));
    plant.why.hidden = !against.length;
    byId(one.out ? "out" : "left").append(plant.item);
  }

  function counted(left) {
    const harming = left.filter(({ plant }) => plant.harms).length;
    if (!left.length) return "None of the plants of this course. Leave it.";
    const harm = harming ? `; ${harming} may harm` : "";
    return `${left.length} of ${plants.length} still possible${harm}.`;
  }

  // The last food plant that nothing speaks against is named only as what is not contradicted.
  function verdict(left) {
    const open = left.filter(({ against }) => !against.length);
    if (!left.length) return "None of the plants of this course. Leave it.";
    if (!open.length) return "Something speaks against every plant of this course. Leave it.";
    if (open.every(({ plant }) => plant.harms)) {
      return "Only plants that may harm are not contradicted. Leave it.";
    }
    if (open.length > 1) return "";
    const also = left.length > 1 ? " The others in the list are not ruled out." : "";
    return (
      `Of this course's plants only ${open[0].plant.name} is not contradicted.` + also +
      " That does not make it so: read its page, and hold it against what it is mistaken for."
    );
  }

  function show() {
    const answered = questions
      .map((question) => ({ question, seen: seenOf(question) }))
      .filter(({ seen }) => seen.length);
    const all = plants.map((plant) => standing(plant, answered));
    const left = all.filter(({ out }) => !out);
    all.forEach(place);
    const said = answered.length ? verdict(left) : "";
    for (const { plant, against, out } of all) {
      if (plant.beware) plant.beware.hidden = !said || out || against.length > 0;
    }
    byId("verdict").textContent = said;
    byId("verdict").hidden = !said;
    byId("count").textContent = counted(left);
    byId("dropped-section").hidden = left.length === plants.length;
    showTicked(answered);
  }

  function showTicked(answered) {
    for (const question of questions) question.ticked.textContent = either(seenOf(question));
    const items = answered.map(({ question, seen }) => {
      const item = element("li");
      const link = item.appendChild(element("a", "", `${question.about}: ${either(seen)}`));
      link.href = `#question-${question.number}`;
      return item;
    });
    byId("ticked").replaceChildren(...items);
    byId("ticks-section").hidden = !items.length;
    byId("untick").disabled = !items.length;
  }

  function untick() {
    for (const { answers } of questions) for (const { box } of answers) box.checked = false;
    show();
  }

  page.addEventListener("change", show);
  byId("untick").addEventListener("click", untick);
  // Some browsers bring ticks back when a page is loaded again: those are of another plant.
  window.addEventListener("pageshow", (event) => (event.persisted ? show() : untick()));
  byId("needs-script").hidden = true;
  byId("bar").hidden = false;
  byId("questions").hidden = false;
  untick();
})();
