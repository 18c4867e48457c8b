// The first words, before the app is here: in the person's language, and of the open book where
// there is one. It runs before the page is painted.
//
// The build puts two constants in front: LANGUAGES, the tags there are, and WORDS, the words of
// this page by key in each language but English.

{
  const root = document.documentElement;

  // What the app noted for the first paint; nothing where the browser gives no storage.
  function noted(name) {
    try {
      return JSON.parse(localStorage.getItem(`brimwright.${name}`));
    } catch {
      return null;
    }
  }

  // The language that was chosen here, or else the first one of the browser's that there is.
  function languageHere() {
    const base = (tag) => tag.split("-")[0];
    const nearest = navigator.languages.map((wanted) => LANGUAGES.find((tag) => base(tag) === base(wanted)));
    return [noted("language"), ...nearest].find((tag) => LANGUAGES.includes(tag)) ?? "en-US";
  }

  root.lang = languageHere();
  const words = WORDS[root.lang];
  if (words) for (const element of document.querySelectorAll("[data-text]")) {
    element.textContent = words[element.dataset.text];
  }
  if (noted("started")) {
    root.classList.add("started");
    document.getElementById("start-name").textContent = noted("open-name") ?? "Brimwright";
  }
}
