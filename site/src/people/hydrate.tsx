import { hydrate } from 'preact';
import { PeopleApp } from './PeopleApp.tsx';

const place = document.getElementById('people');
if (place) hydrate(<PeopleApp />, place);
