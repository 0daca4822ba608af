"use strict";

/** Shows only the functions whose entries hold every word typed, and copies formulas. */
(() => {
  const form = document.getElementById("search");
  const field = document.getElementById("find");
  const said = document.getElementById("found");

  /** Capitals, accents and the signs within names do not matter. */
  const folded = (text) =>
    text
      .normalize("NFD")
      .replace(/\p{M}/gu, "")
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, " ");

  const entries = [...document.querySelectorAll("main article")].map((article) => ({
    article,
    link: document.querySelector(`nav a[href="#${article.id}"]`).parentElement,
    text: folded(article.textContent),
  }));
  const sections = [...document.querySelectorAll("main section")];

  function search() {
    const words = folded(field.value).split(" ").filter(Boolean);
    let hits = 0;
    for (const { article, link, text } of entries) {
      const isHit = words.every((word) => text.includes(word));
      article.hidden = link.hidden = !isHit;
      if (isHit) hits++;
    }
    for (const section of sections) {
      section.hidden = !section.querySelector("article:not([hidden])");
      const heading = document.querySelector(`nav a[href="#${section.querySelector("h2").id}"]`).parentElement;
      heading.hidden = heading.nextElementSibling.hidden = section.hidden;
    }
    said.textContent = words.length === 0 ? "" : answer(hits);
  }

  function answer(hits) {
    if (hits === 0) return "No function tells of that. Try fewer or other words, such as toe, lame or tank.";
    return `${hits} of ${entries.length} functions`;
  }

  /** A link into the page must find its entry, whatever was searched before. */
  function showTarget() {
    const target = document.getElementById(location.hash.slice(1));
    if (!target?.closest("[hidden]")) return;
    field.value = "";
    search();
    target.scrollIntoView();
  }

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const first = entries.find(({ article }) => !article.hidden);
    first?.link.firstElementChild.focus();
  });
  field.addEventListener("input", search);
  addEventListener("hashchange", showTarget);
  document.addEventListener("keydown", (event) => {
    if (event.key !== "/" || event.target === field) return;
    event.preventDefault();
    field.focus();
  });
  form.hidden = false;

  for (const block of document.querySelectorAll("pre")) {
    const button = document.createElement("button");
    const name = block.closest("article").querySelector("h3").textContent;
    button.type = "button";
    button.textContent = "Copy";
    button.setAttribute("aria-label", `Copy the formula of ${name}`);
    button.addEventListener("click", () => {
      navigator.clipboard.writeText(block.textContent).then(
        () => (said.textContent = `The formula of ${name} is copied.`),
        () => (said.textContent = "The browser does not let a page copy: select the formula and copy it."),
      );
    });
    block.after(button);
  }
})();
