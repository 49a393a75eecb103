// While the planner works: says how far it is, and shows the plan when it is there.
"use strict";
(() => {
  const place = document.querySelector("[data-planning]");
  if (!place) return;
  const ask = async () => {
    const answer = await fetch("/week/state").then(r => r.json()).catch(() => null);
    if (answer && !answer.planning) { location.reload(); return; }
    if (answer && answer.says && place.textContent !== answer.says) place.textContent = answer.says;
    setTimeout(ask, 1000);
  };
  setTimeout(ask, 500);
})();
