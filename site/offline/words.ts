/** What a page says about the copy of the site that is kept on the device. */
export const words = {
  newer: 'A newer version is here.',
  useNow: 'Use it now',
  later: 'Later',
  changing: 'Changing over…',
  notHere: {
    title: 'Not on this device yet',
    description: 'This page is not kept on this device yet.',
    says: 'The device has no network, and this page was not fetched when there was one. Pages of the reference, and those in another language, come by themselves a while after the first visit with a network.',
    kept: 'What is here already:',
  },
};
