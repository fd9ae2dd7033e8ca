/** The page in the other language opens with what is entered in this one: it stands in the address. */
document.getElementById('other-language')?.addEventListener('click', ({ currentTarget }) => {
  if (currentTarget instanceof HTMLAnchorElement) {
    currentTarget.search = location.search;
    currentTarget.hash = location.hash;
  }
});
