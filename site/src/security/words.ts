/** Every word of the page on security and privacy. */
export const words = {
  title: 'Security and privacy',
  description:
    'What stays in your browser, what a link gives away, what the site defends itself against and what is left to you, and the headers to serve it with.',
  lede: 'There is no account and no server that computes anything. The site is files; your browser does the rest, and keeps what you save.',
  kept: {
    name: 'What is kept',
    columns: { what: 'What', where: 'Where', until: 'Until' },
    rows: [
      {
        what: 'People with their health answers, gyms, sessions done and running',
        where: 'the database of this browser',
        until: 'you erase them, or the browser clears the data of this site',
      },
      {
        what: 'The last unit and the like, so that they need not be chosen again',
        where: 'the local storage of this browser',
        until: 'you erase everything on the page People',
      },
      {
        what: 'A set that is being followed live',
        where: 'the session storage of the tab',
        until: 'the tab is closed',
      },
      {
        what: 'The files of the site, to work without a network',
        where: 'the cache of this browser',
        until: 'a newer version replaces them',
      },
    ],
    open: 'None of it is encrypted by the site. Whoever can use your account on the device can read it, and so can a program that runs under it. A backup is a plain file: keep it where you would keep a client’s notes.',
    people: 'See, save and erase what is kept',
  },
  links: {
    name: 'What a link shows',
    plan: 'A link to a plan holds the whole plan: the name, the health answers, the sets done, the gym. It stands after the # of the address, which browsers do not send to a server. It does go wherever you send it, and stays in the history of every browser that opens it.',
    tool: 'A link to a tool holds what was typed into it before the #, in the query of the address. A server that is asked for that page sees it and may write it into a log. Some tools ask about age, pregnancy, blood pressure or complaints.',
    advice:
      'Give a client a code name instead of a name, and leave health answers out of links that you send.',
  },
  threats: {
    name: 'What could go wrong',
    columns: { what: 'What', done: 'What is done', left: 'What is left to you' },
    rows: [
      {
        what: 'Somebody sends a link, a log or a file that is made to do harm.',
        done: 'Everything from outside is read by checks that take only what they know. Nothing in it is run, and nothing becomes part of the page but as text. A million damaged and hostile inputs are tried before a release.',
        left: 'A link can hold a plan that is wrong for you. Read it before you lift.',
      },
      {
        what: 'A stranger’s script gets into the page.',
        done: 'Every page forbids scripts, styles, pictures and requests from elsewhere, and anything inline. Nothing is loaded from a third party.',
        left: 'Whoever may change the files on the host may change what they do. Guard that account.',
      },
      {
        what: 'Another site under the same address reads what is kept.',
        done: 'Nothing is readable from another origin, and no page can be put into a frame.',
        left: 'Serve the site from a host name of its own, not from a folder beside other sites.',
      },
      {
        what: 'A package that the site is built on is replaced by a bad one.',
        done: 'Versions and checksums are fixed. Install scripts run only for packages that are named one by one. The packages that reach you are few, and listed. Releases carry a signed statement of the commit they were built from.',
        left: 'A weakness that nobody knows yet. Take newer versions.',
      },
      {
        what: 'The device is lost, shared or borrowed.',
        done: 'Everything kept can be seen and erased on one page, in one step.',
        left: 'Lock the device. On a borrowed one use a private window, which forgets.',
      },
      {
        what: 'The browser loses what is kept.',
        done: 'The site asks the browser to keep it for good, says whether it does, and saves all of it as one file.',
        left: 'Save that file now and then.',
      },
    ],
  },
  host: {
    name: 'Serving it yourself',
    says: 'The built site is a folder of files. These headers belong to every answer. The first of them also stands in every page, but only a header can keep the pages out of frames. On a host name that has nothing but HTTPS, add Strict-Transport-Security.',
    columns: { header: 'Header', value: 'Value' },
    goes: 'Goes into',
  },
  hosts: {
    headerFile: {
      host: 'Hosts of static files with a header file',
      goes: '_headers, beside index.html',
    },
    nginx: { host: 'nginx', goes: 'the configuration of the server' },
    apache: { host: 'Apache', goes: '.htaccess, beside index.html, with mod_headers on' },
  },
  report: {
    name: 'Reporting a weakness',
    says: 'Tell it privately, not in public: in the repository of this project under Security, “Report a vulnerability”. Say what an attacker gains and how to see it. The file SECURITY.md there has the rest.',
    others: 'Work of others in this site, with its licences',
  },
} as const;
