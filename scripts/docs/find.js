/* global document -- it runs in a page */
/* Leaves the sections that hold a word beginning with each of those typed; classic script, so that it also runs from a folder without a server. */
const input = document.getElementById("search");
const found = document.getElementById("found");
const sections = [...document.querySelectorAll("#sections li")].map((item) => ({
  item,
  words: ` ${item.textContent.toLowerCase()} ${item.dataset.words}`,
}));

input.addEventListener("input", () => {
  const wanted = input.value.toLowerCase().split(/\s+/).filter(Boolean);
  let count = 0;
  for (const { item, words } of sections) {
    item.hidden = !wanted.every((word) => words.includes(` ${word}`));
    if (!item.hidden) count++;
  }
  found.textContent = count === 1 ? "1 section" : `${count} sections`;
});
