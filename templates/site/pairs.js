// What tells two plants apart today: the rows of the table that can be looked at are marked, and one
// sentence is written above. Without this script the page lacks nothing but these two.
"use strict";

(function () {
  const MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const NAMES = ["January", "February", "March", "April", "May", "June", "July", "August",
    "September", "October", "November", "December"];

  // The day of a year of 365 days; 29 February counts as the 28th.
  function dayOfYear(date) {
    const month = date.getMonth();
    const before = MONTHS.slice(0, month).reduce((sum, days) => sum + days, 0);
    return before + Math.min(date.getDate(), MONTHS[month]);
  }

  // A window whose last day is before its first runs over the new year.
  function isAmong(day, words) {
    const windows = words.split(" ").filter(Boolean).map((days) => days.split("-").map(Number));
    return windows.some(([first, last]) =>
      first <= last ? first <= day && day <= last : day >= first || day <= last);
  }

  function mark(row, isSeen) {
    for (const old of row.querySelectorAll(".now")) old.remove();
    row.classList.toggle("seen-now", isSeen);
    if (!isSeen) return;
    const word = document.createElement("span");
    word.className = "now";
    word.textContent = "look at it today";
    row.querySelector("th").append(word);
  }

  // Features by their organs: `leaves: gloss, venation; flowers: petals`.
  function named(rows) {
    const organs = new Map();
    for (const row of rows) {
      const labels = organs.get(row.dataset.organ) || [];
      organs.set(row.dataset.organ, [...labels, row.dataset.label]);
    }
    return [...organs].map(([organ, labels]) => organ + ": " + labels.join(", ")).join("; ");
  }

  function features(rows) {
    const firm = named(rows.filter((row) => row.classList.contains("firm")));
    const others = named(rows.filter((row) => !row.classList.contains("firm")));
    return firm && others ? firm + "; less sure: " + others : firm || others;
  }

  function sentence(date, isSure, rows) {
    const today = "Today, " + date.getDate() + " " + NAMES[date.getMonth()];
    if (isSure) return today + ": look at " + features(rows) + ".";
    const none = today + ", nothing that can be seen tells them apart surely.";
    return rows.length ? none + " To be seen: " + features(rows) + "." : none;
  }

  let shown = "";

  function show() {
    const line = document.getElementById("today");
    const date = new Date();
    if (!line || date.toDateString() === shown) return;
    shown = date.toDateString();
    const day = dayOfYear(date);
    const seen = [];
    for (const row of document.querySelectorAll("tr[data-days]")) {
      const isSeen = isAmong(day, row.dataset.days);
      mark(row, isSeen);
      if (isSeen) seen.push(row);
    }
    const isSure = isAmong(day, line.dataset.sure);
    line.classList.toggle("doubt", !isSure);
    line.textContent = sentence(date, isSure, seen);
    line.hidden = false;
  }

  // A page that was left open over night is shown again with the new day.
  show();
  window.addEventListener("pageshow", show);
  document.addEventListener("visibilitychange", show);
})();
