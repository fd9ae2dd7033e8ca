import { openBrowser } from './openBrowser.ts';
import { serveSite } from './serveSite.ts';
const site = await serveSite(); const b = await openBrowser();
for (const p of process.argv.slice(2)) for (const w of [390,1280]) { const page = await b.newPage({viewport:{width:w,height:844}}); page.on('console',m=>m.type()==='error'&&console.log(m.text())); await page.goto(site.origin+p,{waitUntil:'networkidle'}); await page.screenshot({path:'/tmp/h/scratch/'+p.replaceAll('/','_')+w+'.png',fullPage:true}); await page.close(); }
await b.close(); site.stop();
