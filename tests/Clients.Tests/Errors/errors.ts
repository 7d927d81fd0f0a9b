import createClient from "openapi-fetch";
import type { components, paths } from "./contract.js";

const [service, brokenService, strictService, key] = process.argv.slice(2) as [string, string, string, string];
const client = createClient<paths>({ baseUrl: service });
const broken = createClient<paths>({ baseUrl: brokenService });
const strict = createClient<paths>({ baseUrl: strictService });
const holder = createClient<paths>({ baseUrl: strictService, headers: { Authorization: `Bearer ${key}` } });
const changed = (change: RequestInit) => createClient<paths>({ baseUrl: service, fetch: request => fetch(new Request(request, change)) });
const body: components["schemas"]["ServiceRecord"] = {
  recordId: "HB-0009", jobType: "repair", jurisdiction: "GB-SCT", finishedAt: "2026-09-14T10:25:00Z", appliance: { fuel: "butane" },
};
const nobodys = { params: { path: { evaluationId: "none" } } };

await refused(client.GET("/v1/rules", { params: { query: { limit: 0 } } }));
await refused(client.POST("/v1/evaluations", { body, bodySerializer: () => "{" }));
await refused(strict.GET("/v1/rules"));
await refused(holder.GET("/v1/evaluations/{evaluationId}", nobodys));
await refused(client.GET("/v1/rules", { headers: { "X-Forwarded-For": "127.0.0.1" } }));
await refused(client.GET("/v1/evaluations/{evaluationId}", nobodys));
await refused(changed({ method: "PATCH" }).GET("/v1/rules"));

const accepted = await client.POST("/v1/audits", { body: Array(4000).fill(body) });
const path = { auditId: accepted.data!.auditId };
await refused(client.GET("/v1/audits/{auditId}/report", { params: { path } }));
await client.DELETE("/v1/audits/{auditId}", { params: { path } });
await refused(client.POST("/v1/audit-lines", { body: Array(5001).fill(body), parseAs: "text" }));
await refused(client.POST("/v1/evaluations", { body, headers: { "Content-Encoding": "br" } }));
await refused(client.POST("/v1/audits", { body: [] }));
await refused(untilRefused(() => holder.GET("/v1/rules")));
await refused(broken.GET("/v1/evaluations/{evaluationId}", nobodys));
await seconds(2); // The service gives the holder of the key a request a second.
await refused(holder.POST("/v1/evaluations", { body, fetch: request => fetch(request.url, { method: "POST", headers: request.headers, body: late(), duplex: "half" } as RequestInit) }));

type Answer = { error?: components["schemas"]["Problem"]; response: Response };

async function refused(call: Promise<Answer>): Promise<void> {
  const { error, response } = await call;
  console.log(error?.status === response.status && error.traceId.length === 32 ? `${response.status} ${error.type}` : "accepted");
}

async function untilRefused(call: () => Promise<Answer>): Promise<Answer> {
  for (;;) {
    const answer = await call();
    if (answer.error)
      return answer;
  }
}

/** A body that takes longer to arrive than the service waits. */
function late(): ReadableStream<Uint8Array> {
  const text = new TextEncoder();
  return new ReadableStream({
    async start(body) {
      body.enqueue(text.encode("{"));
      await seconds(6);
      body.enqueue(text.encode("}"));
      body.close();
    },
  });
}

function seconds(number: number): Promise<void> {
  return new Promise(resolve => setTimeout(resolve, 1000 * number));
}
