// The page is served with the demonstration. Where the address carries a plan, or a session is
// going on, that stays hidden until the right one is there. The style sheet shows it after some
// seconds in any case.
let isRunning = false;
try {
  isRunning = localStorage.getItem('windlass.floor') !== null;
} catch {
  // A browser that keeps nothing has no session that goes on.
}
if (isRunning || /^#\d|-day$/.test(location.hash))
  document.documentElement.classList.add('opening');
