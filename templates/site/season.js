// What is in season today: read from the table of the season page, written above the map, and a
// line for today through the map. Without this script the page lacks nothing but these two.
"use strict";

(function () {
  const YEAR = 365;
  const SOON = 14;
  const MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const SVG = "http://www.w3.org/2000/svg";

  // The day of a year of 365 days; 29 February counts as the 28th.
  function dayOfYear(date) {
    const month = date.getMonth();
    const before = MONTHS.slice(0, month).reduce((sum, days) => sum + days, 0);
    return before + Math.min(date.getDate(), MONTHS[month]);
  }

  function windowsOf(words) {
    const written = (words || "").split(" ").filter(Boolean);
    return written.map((days) => days.split("-").map(Number));
  }

  // A window whose last day is before its first runs over the new year.
  function isIn(day, [first, last]) {
    return first <= last ? first <= day && day <= last : day >= first || day <= last;
  }

  function beginsSoon(day, [first]) {
    const until = (first - day + YEAR) % YEAR;
    return until >= 1 && until <= SOON;
  }

  // `leaves`, or `perhaps leaves` on a day of which nobody can say; nothing if it is not there. What
  // is eaten is named only in its time, what harms also on the uncertain days before and behind it.
  function wordsNow(row, day) {
    const part = row.querySelector(".part").textContent;
    const on = windowsOf(row.dataset.days).some((window) => isIn(day, window));
    const unsure = windowsOf(row.dataset.unsure).some((window) => isIn(day, window));
    if (row.dataset.kind === "harm") return on ? part : unsure && "perhaps " + part;
    const doubt = windowsOf(row.dataset.doubt).some((window) => isIn(day, window));
    return on && (unsure ? "perhaps " : "") + part + (doubt ? " (not yet sure)" : "");
  }

  // What a plant has on a day and what begins soon, as words by the kind of row.
  function partsOf(body, day) {
    const now = { eaten: [], seen: [], harm: [] };
    const soon = { eaten: [], seen: [], harm: [] };
    for (const row of body.querySelectorAll("tr[data-kind]")) {
      const words = wordsNow(row, day);
      if (words) {
        now[row.dataset.kind].push(words);
      } else if (windowsOf(row.dataset.days).some((window) => beginsSoon(day, window))) {
        soon[row.dataset.kind].push(row.querySelector(".part").textContent);
      }
    }
    return { now, soon };
  }

  function joined(words) {
    if (words.length < 2) return words.join("");
    return words.slice(0, -1).join(", ") + " and " + words[words.length - 1];
  }

  function foodWords(parts) {
    return parts.eaten.length ? joined(parts.eaten) + " to eat" : "";
  }

  function harmWords({ now, soon }) {
    const begins = soon.harm.length ? "soon " + joined(soon.harm) : "";
    return [joined(now.harm), begins].filter(Boolean).join("; ");
  }

  function item(body, words) {
    const line = document.createElement("li");
    for (const part of body.querySelector("th").childNodes) line.append(part.cloneNode(true));
    line.append(": " + words);
    return line;
  }

  function fill(list, items) {
    if (!items.length) {
      const none = document.createElement("li");
      none.textContent = "none of the plants of this course";
      items = [none];
    }
    list.replaceChildren(...items);
  }

  function fillLists(section, table, day) {
    const lists = { "now-food": [], "soon-food": [], "now-harm": [] };
    for (const body of table.tBodies) {
      const parts = partsOf(body, day);
      const said = {
        "now-food": foodWords(parts.now),
        "soon-food": foodWords(parts.soon),
        "now-harm": harmWords(parts),
      };
      for (const name of Object.keys(lists)) {
        if (said[name]) lists[name].push(item(body, said[name]));
      }
    }
    for (const name of Object.keys(lists)) fill(document.getElementById(name), lists[name]);
    section.hidden = false;
  }

  function element(name, attributes) {
    const made = document.createElementNS(SVG, name);
    for (const key of Object.keys(attributes)) made.setAttribute(key, attributes[key]);
    return made;
  }

  // `data-from` is where the year begins, in percent of the drawing's width; it ends at its edge.
  function drawToday(map, day) {
    const from = Number(map.dataset.from);
    const at = from + ((100 - from) * (day - 1)) / YEAR;
    const x = at.toFixed(3) + "%";
    const top = map.classList.contains("head") ? "32%" : "0";
    for (const old of map.querySelectorAll(".today")) old.remove();
    map.append(element("line", { class: "today", x1: x, x2: x, y1: top, y2: "100%" }));
    if (!map.classList.contains("head")) return;
    const anchor = at > 95 ? "end" : "middle";
    const word = element("text", { class: "today", x: x, y: "24%", "text-anchor": anchor });
    word.textContent = "today";
    map.append(word);
  }

  let shown = 0;

  function show() {
    const section = document.getElementById("now");
    const table = document.getElementById("season-table");
    const day = dayOfYear(new Date());
    if (!section || !table || day === shown) return;
    shown = day;
    fillLists(section, table, day);
    // A sheet of paper hangs on the wall longer than a day.
    const maps = document.querySelectorAll("svg.season-map[data-from]:not(.sheet)");
    for (const map of maps) drawToday(map, day);
  }

  // A page that was left open over night is shown again with the new day.
  show();
  window.addEventListener("pageshow", show);
  document.addEventListener("visibilitychange", show);
})();
