// The address carries a plan or asks for somebody kept, and the page is served with another plan:
// that stays hidden until the one of the address is there. The style sheet shows it after some
// seconds in any case.
if (/^#\d|-day$/.test(location.hash) || /[?&](person|gym)=/.test(location.search)) {
  document.documentElement.classList.add('opening');
}
