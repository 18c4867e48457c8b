// The first words, before the app is here: in the person's language, and of the open book where
// there is one. It runs before the page is painted.
//
// The build puts LANGUAGES in front, the tags there are.

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

  const base = (tag) => tag.split("-")[0];

  // The language that was chosen here, or else the first one of the browser's that there is.
  function languageHere() {
    const nearest = navigator.languages.map((wanted) => LANGUAGES.find((tag) => base(tag) === base(wanted)));
    return [noted("language"), ...nearest].find((tag) => LANGUAGES.includes(tag)) ?? "en-US";
  }

  // The languages whose letters run from right to left.
  const RIGHT_TO_LEFT = ["ar", "fa", "he", "ur"];

  // The language that the page is read in, and the way its letters run. The app calls it, too.
  globalThis.brimwrightReadIn = (language) => {
    root.lang = language;
    root.dir = RIGHT_TO_LEFT.includes(base(language)) ? "rtl" : "ltr";
  };

  brimwrightReadIn(languageHere());
  // The page has English words; those of another language are put in when its table is here.
  if (root.lang !== "en-US") root.classList.add("words-coming");
  if (noted("started")) {
    root.classList.add("started");
    document.getElementById("start-name").textContent = noted("open-name") ?? "Brimwright";
  }
}
