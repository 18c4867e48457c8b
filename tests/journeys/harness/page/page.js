const by = (id) => document.getElementById(id);

by("keep").addEventListener("click", () => {
  const kept = `${by("fruit").value}, ${by("colour").value}`;
  localStorage.setItem("kept", kept);
  document.querySelector("[data-testid=kept]").textContent = `Kept: ${kept}`;
});

function withFruits(mode, act) {
  const opening = indexedDB.open("fruits", 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore("fruits");
  opening.onsuccess = () => {
    const transaction = opening.result.transaction("fruits", mode);
    act(transaction, transaction.objectStore("fruits"));
  };
}

by("write").addEventListener("click", () =>
  withFruits("readwrite", (transaction, fruits) => {
    fruits.put("a mango", 1);
    transaction.oncomplete = () => (by("database").textContent = "Written");
  }),
);

by("read").addEventListener("click", () =>
  withFruits("readonly", (_, fruits) => {
    const reading = fruits.get(1);
    reading.onsuccess = () => (by("database").textContent = `Read: ${reading.result}`);
  }),
);
