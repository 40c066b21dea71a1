// Sifts the list of cards by machine, material, operation, level, units and time. Without it the whole list is there.
(function () {
  "use strict";

  var KEYS = [["machine", "Machine"], ["material", "Material"], ["operation", "Operation"], ["level", "Level"], ["units", "Units"], ["minutes", "Time"]];
  var TIMES = [[60, "an hour at most"], [120, "two hours at most"], [240, "four hours at most"], [480, "eight hours at most"]];

  document.querySelectorAll("table[data-cards]").forEach(sift);

  function sift(table) {
    var rows = Array.prototype.slice.call(table.tBodies[0].rows);
    var chosen = {}, boxes = {};
    var form = add(null, "form", "card-sift");
    KEYS.forEach(function (key) {
      var choices = choicesOf(rows, key[0]);
      if (choices.length) boxes[key[0]] = chooser(form, key[1], choices, function (value) { choose(key[0], value); });
    });
    if (!Object.keys(boxes).length) return;
    var count = add(form, "p", "card-count"), all = add(form, "button", "card-all", "Show all");
    count.setAttribute("role", "status");
    all.type = "button";
    all.addEventListener("click", function () { chosen = {}; show(true); });
    form.addEventListener("submit", function (event) { event.preventDefault(); });
    table.before(form);
    window.addEventListener("hashchange", function () { read(); show(false); });
    read();
    show(false);

    function choose(key, value) {
      if (value) chosen[key] = value; else delete chosen[key];
      show(true);
    }

    function read() {
      var asked = new URLSearchParams(location.hash.slice(1));
      chosen = {};
      Object.keys(boxes).forEach(function (key) {
        var there = Array.prototype.some.call(boxes[key].options, function (option) { return option.value === asked.get(key); });
        if (there && asked.get(key)) chosen[key] = asked.get(key);
      });
    }

    function show(keep) {
      var left = rows.filter(function (row) { return fits(row, chosen); });
      rows.forEach(function (row) { row.hidden = left.indexOf(row) < 0; });
      Object.keys(boxes).forEach(function (key) {
        boxes[key].value = chosen[key] || "";
        Array.prototype.forEach.call(boxes[key].options, function (option) {
          var wanted = Object.assign({}, chosen);
          wanted[key] = option.value;
          option.disabled = option.value !== "" && !rows.some(function (row) { return fits(row, wanted); });
        });
      });
      count.textContent = left.length === rows.length ? "All " + rows.length + " cards" : left.length + " of " + rows.length + " cards";
      all.hidden = !Object.keys(chosen).length;
      if (keep) remember();
    }

    // In the address, so that the way back from a card, or a link sent on, shows the same list
    function remember() {
      var place = new URLSearchParams(chosen).toString();
      try { history.replaceState(null, "", place ? "#" + place : location.pathname + location.search); } catch (refused) { /* not kept, then */ }
    }
  }

  function fits(row, chosen) {
    return Object.keys(chosen).every(function (key) {
      if (!chosen[key]) return true;
      if (key === "minutes") return Number(row.dataset.minutes) <= Number(chosen[key]);
      return row.dataset[key].split("|").indexOf(chosen[key]) >= 0;
    });
  }

  // The choices that leave some card out
  function choicesOf(rows, key) {
    var every = key === "minutes" ? TIMES.map(function (time) { return [String(time[0]), time[1]]; }) : [];
    if (key !== "minutes") rows.forEach(function (row) {
      row.dataset[key].split("|").forEach(function (word) {
        if (word && !every.some(function (known) { return known[0] === word; })) every.push([word, word]);
      });
    });
    if (key !== "minutes") every.sort(function (a, b) { return a[0] < b[0] ? -1 : 1; });
    var before = 0;
    var telling = every.filter(function (choice) {
      var wanted = {};
      wanted[key] = choice[0];
      var left = rows.filter(function (row) { return fits(row, wanted); }).length, more = left > before;
      if (key === "minutes") before = left;
      return left > 0 && left < rows.length && more;
    });
    return telling.length && key !== "minutes" ? every : telling;
  }

  function chooser(form, name, choices, chosen) {
    var label = add(form, "label", "card-key"), box;
    add(label, "span", "", name);
    box = add(label, "select", "");
    box.setAttribute("aria-label", name);
    [["", "any"]].concat(choices).forEach(function (choice) { add(box, "option", "", choice[1]).value = choice[0]; });
    box.addEventListener("change", function () { chosen(box.value); });
    return box;
  }

  function add(parent, name, kind, text) {
    var made = document.createElement(name);
    if (kind) made.className = kind;
    if (text) made.textContent = text;
    if (parent) parent.append(made);
    return made;
  }
})();
