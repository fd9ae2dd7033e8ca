import type { APIRoute } from 'astro';
import { href } from '../lib/href.ts';

export const GET: APIRoute = () =>
  new Response(
    JSON.stringify({
      name: 'Windlass',
      short_name: 'Windlass',
      description:
        'Works out hard, short, slow strength sessions: loads, warm-ups, tempo, recovery.',
      id: href('/'),
      lang: 'en',
      start_url: href('/plan/'),
      scope: href('/'),
      display: 'standalone',
      background_color: '#f7f5ef',
      theme_color: '#f7f5ef',
      icons: [
        { src: href('/icon.svg'), type: 'image/svg+xml', sizes: 'any' },
        { src: href('/icon-192.png'), type: 'image/png', sizes: '192x192', purpose: 'any' },
        { src: href('/icon-512.png'), type: 'image/png', sizes: '512x512', purpose: 'any' },
        { src: href('/icon-512.png'), type: 'image/png', sizes: '512x512', purpose: 'maskable' },
      ],
      shortcuts: [
        { name: 'Plan a session', url: href('/plan/') },
        { name: 'Tools', url: href('/tools/') },
        { name: 'Guides', url: href('/guides/') },
      ],
    }),
  );
