// The address carries a plan, and the page is served with another one: that stays hidden until the
// plan of the address has been read. The style sheet shows it after some seconds in any case.
if (/^#\d|-day$/.test(location.hash)) document.documentElement.classList.add('opening');
