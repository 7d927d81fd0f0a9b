import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import createClient from "openapi-fetch";
import type { components, paths } from "./contract.js";

const [service, file] = process.argv.slice(2);
const client = createClient<paths>({ baseUrl: service! });
const record: components["schemas"]["ServiceRecord"] = JSON.parse(readFileSync(file!, "utf8"));

// A key of your own: sent again after a lost answer, the request gives the same evaluation.
const key = randomUUID();
const posted = await client.POST("/v1/evaluations", { body: record, params: { header: { "Idempotency-Key": key } } });
if (!posted.data) throw new Error(posted.error.title);
console.log(`${posted.data.recordId}: ${posted.data.outcome}, may be closed: ${posted.data.closing.allowed}`);

const evaluationId = posted.data.evaluationId!;
const read = await client.GET("/v1/evaluations/{evaluationId}", { params: { path: { evaluationId } } });
console.log(`read back: ${read.data?.resultHash === posted.data.resultHash}`);

const again = await client.POST("/v1/evaluations", { body: record, params: { header: { "Idempotency-Key": key } } });
console.log(`sent again, the same evaluation: ${again.data?.evaluationId === evaluationId}`);

// Half a record, asked while still on site.
const half: typeof record = {
  recordId: "HB-0002", jobType: "annualService", jurisdiction: "GB-ENG", finishedAt: "2026-09-14T10:25:00+01:00",
  appliance: { fuel: "naturalGas" }, combustion: { readings: [{ rate: "maximum", stage: "afterWork", coPpm: 96 }] },
};
const asked = await client.POST("/v1/evaluations", { body: half, params: { query: { store: false } } });
console.log(`${asked.data?.recordId}: ${asked.data?.outcome}, asks for more: ${(asked.data?.missing.length ?? 0) > 0}`);

// A fault is named with its place.
half.combustion!.readings![0]!.co2Percent = 101;
const refused = await client.POST("/v1/evaluations", { body: half });
for (const fault of refused.error?.errors ?? []) console.log(`${refused.response.status} ${fault.pointer}: ${fault.code}`);

const reused = await client.POST("/v1/evaluations", { body: { ...record, recordId: "other" }, params: { header: { "Idempotency-Key": key } } });
console.log(`${reused.response.status} ${reused.error?.type}`);
const none = await client.GET("/v1/rules/{ruleId}", { params: { path: { ruleId: "none" } } });
console.log(`${none.response.status} ${none.error?.type}`);

// Many records: stored, judged by and by, followed by their id. A faulty one is reported, and the others are judged.
const accepted = await client.POST("/v1/audits", { body: [record, half] });
if (!accepted.data) throw new Error(accepted.error.title);
const auditId = accepted.data.auditId;
let audit = await client.GET("/v1/audits/{auditId}", { params: { path: { auditId } } });
while (audit.data?.state === "queued" || audit.data?.state === "running") {
  await new Promise((resolve) => setTimeout(resolve, 100));
  audit = await client.GET("/v1/audits/{auditId}", { params: { path: { auditId } } });
}

const faults = await client.GET("/v1/audits/{auditId}/findings", { params: { path: { auditId }, query: { outcome: "rejected" } } });
const records = audit.data?.records;
console.log(`${audit.data?.state}: ${records?.judged} judged, ${records?.rejected} rejected: ${faults.data?.items[0]?.recordId}`);
