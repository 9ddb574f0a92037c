import { jsonSchemas } from '../../.config/tasks/json-schema.js';
import Ajv2020 from 'ajv/dist/2020.js';
const s = jsonSchemas();
for (const [f, j] of Object.entries(s)) console.log(f, JSON.stringify(j).length, Object.keys(j.$defs ?? {}).join());
console.log(JSON.stringify(s.plan, null, 1).slice(0, 2500));
const ajv = new (Ajv2020 as any)({ strict: true, allErrors: true });
for (const [f, j] of Object.entries(s)) ajv.compile(j);
const v = ajv.getSchema('chain-rigging/part');
console.log(v({id:'a',kind:'chain',size:'5/16', markedWll:'0 lb'}), v.errors?.map((e:any)=>e.instancePath+' '+e.keyword).join('; '));
