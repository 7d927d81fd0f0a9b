import createClient from "openapi-fetch";
import type { components, paths } from "./contract.js";

const [service, brokenService, hurriedService, guardedService, key] = process.argv.slice(2);
const client = createClient<paths>({ baseUrl: service! });
const broken = createClient<paths>({ baseUrl: brokenService! });
const hurried = createClient<paths>({ baseUrl: hurriedService! });
const unknown = createClient<paths>({ baseUrl: guardedService! });
const keyed = createClient<paths>({ baseUrl: guardedService!, headers: { Authorization: `Bearer ${key}` } });
const body: components["schemas"]["ServiceRecord"] = {
  recordId: "HB-0009", jobType: "repair", jurisdiction: "GB-SCT", finishedAt: "2026-09-14T10:25:00Z", appliance: { fuel: "butane" },
};

await refused(client.GET("/v1/rules", { params: { query: { limit: 0 } } }));
await refused(client.POST("/v1/evaluations", { body, bodySerializer: () => "{" }));
await refused(unknown.GET("/v1/rules"));
await refused(client.GET("/v1/rules", { headers: { "X-Forwarded-For": "127.0.0.1" } }));
await refused(keyed.POST("/v1/evaluations", { body }));
await refused(client.GET("/v1/evaluations/{evaluationId}", { params: { path: { evaluationId: "none" } } }));

const accepted = await client.POST("/v1/audits", { body: Array(4000).fill(body), params: { header: { Prefer: "respond-async" } } });
const path = { auditId: (accepted.data as components["schemas"]["AuditStatus"]).auditId };
await refused(client.GET("/v1/audits/{auditId}/report", { params: { path } }));
await client.DELETE("/v1/audits/{auditId}", { params: { path } });
await refused(client.POST("/v1/audits", { body: Array(5001).fill(body) }));
await refused(client.POST("/v1/evaluations", { body, headers: { "Content-Encoding": "br" } }));
await refused(client.POST("/v1/audits", { body: [] }));
for (let times = 0; times < 100 && (await keyed.GET("/v1/rules")).response.ok; times++);
await refused(keyed.GET("/v1/rules"));
await refused(broken.GET("/v1/evaluations/{evaluationId}", { params: { path: { evaluationId: "none" } } }));
await refused(hurried.POST("/v1/evaluations", { body }));

async function refused(call: Promise<{ error?: components["schemas"]["Problem"]; response: Response }>): Promise<void> {
  const { error, response } = await call;
  console.log(error?.status === response.status && error.traceId.length === 32 ? `${response.status} ${error.type}` : "accepted");
}
