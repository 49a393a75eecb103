// Keeps the floor view's own files, so that it opens without the program; what it shows comes from the tablet's database.
// Page and words are kept in the language they were asked for in; in another one the version is another too, and all is asked for anew.
"use strict";
const version = "{version}";
const shell = ["/floor/", "/floor/floor.js", "/floor/words.js", "/assets/floor-rule.js", "/floor/app.webmanifest", "/assets/site.css", "/assets/icon.svg",
  "/assets/lato-regular.ttf", "/assets/lato-bold.ttf"];
self.addEventListener("install", e => e.waitUntil(
  caches.open(version).then(c => c.addAll(shell.map(p => new Request(p, { cache: "reload" })))).then(() => self.skipWaiting())));
self.addEventListener("activate", e => e.waitUntil(
  caches.keys().then(keys => Promise.all(keys.filter(k => k !== version).map(k => caches.delete(k)))).then(() => self.clients.claim())));
self.addEventListener("fetch", e => {
  const path = new URL(e.request.url).pathname;
  if (e.request.method !== "GET" || !shell.includes(path)) return;
  e.respondWith(caches.open(version).then(async c => await c.match(path) || fetch(e.request)));
});
