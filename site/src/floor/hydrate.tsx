import { hydrate } from 'preact';
import { FloorApp } from './FloorApp.tsx';

const place = document.getElementById('floor');
if (place) hydrate(<FloorApp served={JSON.parse(place.dataset.session ?? '')} />, place);
