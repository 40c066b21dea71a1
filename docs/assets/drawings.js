// A drawing whose lettering comes out small on a narrow screen can be opened large, and moved about with a finger, the
// wheel or the arrow keys. Without this script it is still there, only small.
(function () {
  "use strict";

  var READABLE = 14;    // height of the lettering when opened, in CSS pixels
  var SMALL = 10.5;     // below this a drawing can be opened
  var LETTERING = 8.8;  // height of the lettering in the drawing's own units

  var figures = Array.from(document.querySelectorAll("article figure.drawing")).filter(function (figure) {
    return figure.querySelector("svg.drawing") && window.HTMLDialogElement;
  });
  if (!figures.length) return;
  var box = null, opener = null;

  function natural(svg) { return svg.viewBox.baseVal.width; }

  function made(name, class_, words) {
    var element = document.createElement(name);
    element.className = class_;
    if (words) element.textContent = words;
    return element;
  }

  function open(figure, button) {
    var svg = figure.querySelector("svg.drawing"), large = svg.cloneNode(true), title = svg.querySelector("title");
    large.querySelectorAll("[id]").forEach(function (each) { each.removeAttribute("id"); });
    large.removeAttribute("aria-labelledby");
    large.setAttribute("aria-label", title ? title.textContent : "drawing");
    large.style.width = natural(svg) * READABLE / LETTERING + "px";
    if (!box) {
      box = made("dialog", "drawing-large");
      box.setAttribute("aria-label", "The drawing, large");
      box.append(made("button", "drawing-close", "Close"), made("div", "drawing-scroller"));
      box.lastChild.tabIndex = 0;    // so that the arrow keys move it
      box.firstChild.type = "button";
      box.firstChild.addEventListener("click", function () { box.close(); });
      box.addEventListener("close", function () { box.lastChild.replaceChildren(); if (opener) opener.focus(); });
      document.querySelector("article").append(box);
    }
    opener = button;
    box.lastChild.replaceChildren(large);
    box.showModal();
    box.lastChild.scrollTo(0, 0);
    box.lastChild.focus();
  }

  var all = figures.map(function (figure) {
    var button = made("button", "drawing-open screen-only", "Enlarge");
    button.type = "button";
    button.setAttribute("aria-label", "Enlarge the drawing");
    button.addEventListener("click", function () { open(figure, button); });
    figure.querySelector("svg.drawing").addEventListener("click", function () { if (!button.hidden) open(figure, button); });
    figure.prepend(button);
    return { figure: figure, button: button, svg: figure.querySelector("svg.drawing") };
  });

  function look() {
    var sizes = all.map(function (each) { return each.svg.getBoundingClientRect().width / natural(each.svg) * LETTERING; });
    all.forEach(function (each, place) {
      each.button.hidden = sizes[place] === 0 || sizes[place] >= SMALL || !each.svg.querySelector("text");
      each.figure.classList.toggle("can-open", !each.button.hidden);
    });
  }

  look();
  window.addEventListener("resize", look);
})();
