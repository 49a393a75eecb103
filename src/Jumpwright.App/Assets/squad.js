// While athletes are read or recordings looked through: the roll is asked for again and takes the place of the one that stands.
"use strict";
(() => {
  const ask = async () => {
    const text = await fetch(location.href).then(r => r.ok ? r.text() : null).catch(() => null);
    const now = text && new DOMParser().parseFromString(text, "text/html");
    const says = document.querySelector("[data-reading]");
    if (now) {
      const roll = document.querySelector(".roll"), next = now.querySelector(".roll"), at = now.querySelector("[data-reading]");
      // A link that has the focus must not be taken away under a hand: only sentences change.
      if (roll && next) {
        [...next.children].forEach((row, i) => {
          const here = roll.children[i];
          if (here && here.lastElementChild.textContent !== row.lastElementChild.textContent) here.lastElementChild.replaceWith(row.lastElementChild);
        });
      }
      if (!at) { says.remove(); return; }
      if (says.textContent !== at.textContent) says.textContent = at.textContent;
    }
    setTimeout(ask, 1500);
  };
  setTimeout(ask, 1000);
})();
