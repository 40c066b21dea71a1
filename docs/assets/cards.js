// What a card does when it is tapped: shows the working of a number, remembers ticks, tells an old sheet from the current.
(function () {
  "use strict";

  var article = document.querySelector("article.md-content__inner");
  var card = article && article.querySelector("[data-card]");
  if (!card) return;
  var fingerprint = card.dataset.fingerprint;

  // What every printed sheet carries in its margin
  document.documentElement.style.setProperty("--card-marks", JSON.stringify(card.dataset.marks));

  // Working of a number ---------------------------------------------------------------------------------------------
  var panel = null, shownFor = null, pinned = false, waiting = 0;

  function rowOf(number) {
    return document.getElementById("w-" + (number.id || number.dataset.id));
  }

  function add(parent, name, text, kind) {
    var made = document.createElement(name);
    made.textContent = text;
    if (kind) made.className = kind;
    parent.append(made);
    return made;
  }

  function fill(row) {
    var cells = row.cells, by = row.parentElement.rows[0];    // the formula stands above the numbers that come from it
    panel.replaceChildren();
    add(panel, "button", "×", "panel-close").setAttribute("aria-label", "Close");
    add(panel, "p", cells[1].textContent, "panel-label");
    add(panel, "p", cells[0].textContent, "panel-number");
    add(panel, "p", by.querySelector("[data-formula]").textContent, "panel-formula");
    if (cells[2].textContent) {
      var from = add(panel, "ul", "", "panel-inputs");
      cells[2].querySelectorAll("a").forEach(function (link) {
        var row = document.getElementById(link.hash.slice(1));
        var item = add(from, "li", row ? row.cells[1].textContent + " " : "");
        item.append(link.cloneNode(true));
      });
    }
    add(panel, "p", by.querySelector("[data-source]").textContent, "panel-source");
  }

  function place(number) {
    var box = number.getBoundingClientRect(), width = panel.offsetWidth, height = panel.offsetHeight;
    if (window.innerWidth < 700) { panel.style.left = panel.style.top = ""; return; }
    var left = Math.min(Math.max(8, box.left), window.innerWidth - width - 8);
    var top = box.bottom + 8 + height > window.innerHeight ? box.top - height - 8 : box.bottom + 8;
    panel.style.left = left + "px";
    panel.style.top = Math.max(8, top) + "px";
  }

  function show(number, pin) {
    var row = rowOf(number);
    if (!row) return;
    window.clearTimeout(waiting);    // a tap while the pointer rests: the hover must not come after it and let go of the panel
    if (!panel) {
      panel = document.createElement("div");
      panel.className = "working-panel";
      panel.id = "working-panel";
      panel.setAttribute("role", "status");
      panel.setAttribute("data-md-component", "working");
      article.append(panel);
    }
    if (shownFor) shownFor.removeAttribute("aria-describedby");
    fill(row);
    panel.hidden = false;
    pinned = pin;
    shownFor = number;
    number.setAttribute("aria-describedby", panel.id);
    place(number);
  }

  function hide() {
    window.clearTimeout(waiting);
    if (panel) panel.hidden = true;
    if (shownFor) shownFor.removeAttribute("aria-describedby");
    shownFor = null;
    pinned = false;
  }

  function numberAt(target) {
    if (!target.closest) return null;
    var cell = target.closest("td.figure-cell, .figures > div, td");
    return target.closest("data") || (cell && !target.closest("label, a") ? cell.querySelector(".large data") : null);
  }

  if (article.querySelector("[data-working]")) {
    article.querySelectorAll("data").forEach(function (number) {
      if (!number.closest(".working-sheet, h1, h2, svg")) number.tabIndex = 0;
    });
    article.addEventListener("click", function (event) {
      if (event.target.closest(".panel-close")) return hide();
      var number = numberAt(event.target);
      if (number) { if (number.closest(".working-panel")) event.preventDefault(); show(number, true); return; }
      if (!event.target.closest(".working-panel")) hide();
    });
    document.addEventListener("click", function (event) { if (!article.contains(event.target)) hide(); });
    document.addEventListener("keydown", function (event) {
      if (event.key === "Escape") hide();
      if (event.key === "Enter" && event.target.tagName === "DATA") show(event.target, true);
    });
    article.addEventListener("focusin", function (event) { if (event.target.tagName === "DATA" && !pinned) show(event.target, false); });
    article.addEventListener("focusout", function (event) { if (event.target.tagName === "DATA" && !pinned) hide(); });
    article.addEventListener("pointerover", function (event) {
      var number = event.pointerType === "mouse" && event.target.closest("data");
      window.clearTimeout(waiting);
      if (pinned) return;
      if (number && !number.closest(".working-panel, .working-sheet")) waiting = window.setTimeout(show, 200, number, false);
      else if (!event.target.closest(".working-panel")) waiting = window.setTimeout(hide, 200);
    });
    window.addEventListener("hashchange", openSheet);
    openSheet();
  }

  function openSheet() {
    var wanted = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
    var sheet = wanted && wanted.closest("details");
    if (sheet) { sheet.open = true; wanted.scrollIntoView({ block: "center" }); }
  }

  // Ticks -----------------------------------------------------------------------------------------------------------
  var drawer = "jobcard:" + card.dataset.card + ":" + fingerprint;
  function kept() { try { return JSON.parse(localStorage.getItem(drawer)) || {}; } catch (nothing) { return {}; } }
  function keep(ticks) { try { localStorage.setItem(drawer, JSON.stringify(ticks)); } catch (full) { /* not kept, then */ } }

  var boxes = article.querySelectorAll("input[data-tick]");
  boxes.forEach(function (box) { box.checked = kept()[box.dataset.tick] === true; });
  article.addEventListener("change", function (event) {
    if (!event.target.dataset.tick) return;
    var ticks = kept();
    if (event.target.checked) ticks[event.target.dataset.tick] = true; else delete ticks[event.target.dataset.tick];
    keep(ticks);
  });
  var clear = article.querySelector("[data-clear-ticks]");
  if (clear) {
    clear.parentElement.hidden = false;
    clear.addEventListener("click", function () { boxes.forEach(function (box) { box.checked = false; }); keep({}); });
  }

  // Ticks of an earlier issue: they are not carried over, and the reader is told
  function earlier() {
    var found = [], start = "jobcard:" + card.dataset.card + ":";
    try {
      for (var place = 0; place < localStorage.length; place += 1) {
        var key = localStorage.key(place);
        if (key.indexOf(start) === 0 && key !== drawer && Object.keys(JSON.parse(localStorage.getItem(key)) || {}).length) found.push(key);
      }
    } catch (nothing) { return []; }
    return found;
  }

  if (boxes.length && earlier().length) {
    var changed = document.createElement("div");
    changed.className = "stale old screen-only ticks-put-aside";
    changed.setAttribute("role", "status");
    add(changed, "p", "You ticked boxes on an earlier issue of this card. Its numbers have changed since, so those ticks are put aside. " +
      "Look again at what is set and cut before you go on.");
    var forget = add(changed, "button", "Forget those ticks");
    forget.type = "button";
    forget.addEventListener("click", function () {
      earlier().forEach(function (key) { localStorage.removeItem(key); });
      changed.remove();
    });
    card.before(changed);
  }

  // An old sheet ----------------------------------------------------------------------------------------------------
  var printed = new URLSearchParams(location.search).get("print");
  var told = article.querySelector("[data-stale]");
  if (printed && told) {
    told.hidden = false;
    told.classList.toggle("old", printed !== fingerprint);
    told.textContent = printed === fingerprint ?
      "Your printed sheet is the current one." :
      "Your printed sheet is not the current one. Throw it away and print this page again.";
  }
})();
