import * as s from '../../src/schemas/index.js';
import { readQuantity, readPositive } from '../../src/quantities/read.js';
const inputs: unknown[] = [undefined, null, 5, true, '5 lb', '5', '', '-5 lb', '-0 lb', '0 lb', '5 ft', '1,000 lb', '2 ton', {}, {value:5}, {unit:'lb'}, {value:'5',unit:'lb'}, {value:-5,unit:'lb'},{value:-5,unit:'lb',x:1},{value:5,unit:'lb',x:1},{value:NaN,unit:'lb'},{value:Infinity,unit:'lb'},{value:5,unit:'ft'},{value:5,unit:'x'},{value:0,unit:'lb'},{value:-0,unit:'lb'}, [], [5,'lb'], '1.234567890123456789 lb', 5n, Symbol('a'), ()=>1, '5 lb'.repeat(99), {value:5,unit:['lb']}];
for (const positive of [false,true]) for (const i of inputs) {
  const c = s.checkJson(s.quantitySchema('mass',{positive}), i);
  let core='ok'; try { (positive?readPositive:readQuantity)(i,'mass','') } catch(e:any){core=e.code}
  console.log(positive, typeof i==='object'?JSON.stringify(i):String(i).slice(0,20), c.ok ? 'ok '+JSON.stringify(c.value) : c.issues.map(x=>x.path+':'+x.code).join(' '), core);
}
