using System.Collections.Frozen;

namespace ComplianceApi.Problems;

/// <summary>A kind of problem: its stable name, its status and what it means. The page at <c>/problems/{name}</c> is made from it.</summary>
/// <param name="Name">Last part of the problem's type URI.</param>
/// <param name="Status">HTTP status.</param>
/// <param name="Title">What is wrong, the same for every occurrence.</param>
/// <param name="Explanation">What it means and what to do.</param>
public sealed record ProblemKind(string Name, int Status, string Title, string Explanation)
{
    /// <summary>400, of a body.</summary>
    public static readonly ProblemKind UnreadableBody = new("unreadable-body", 400, "The body cannot be read",
        "The body is empty, not UTF-8, not JSON, nested too deep, or has two members of one name, so that it has no meaning or more than one. Each entry of errors says where. Mend the JSON and send it again.");

    /// <summary>400, of a query or path.</summary>
    public static readonly ProblemKind InvalidParameter = new("invalid-parameter", 400, "A parameter of the request is wrong",
        "The query or the path has a parameter that this route does not know, that is given twice, or whose value is not allowed. Each entry of errors names the parameter and what was expected. Nothing was judged or stored: a mistyped parameter is never ignored.");

    /// <summary>400, of anything else.</summary>
    public static readonly ProblemKind BadRequest = new("bad-request", 400, "The request is not valid HTTP",
        "The request breaks the rules of HTTP and was not looked at further.");

    /// <summary>401.</summary>
    public static readonly ProblemKind KeyNeeded = new("key-needed", 401, "A key is needed",
        "The request has no key, or one that is unknown, expired or revoked; which of them is not told. Send the header Authorization: Bearer and the key that whoever runs the service has given you.");

    /// <summary>403, a scope.</summary>
    public static readonly ProblemKind ScopeMissing = new("scope-missing", 403, "The key does not open this",
        "The key is in use, but not for this. The header WWW-Authenticate of the answer names the scope that is missing. Ask whoever runs the service for a key that has it.");

    /// <summary>403, forwarded.</summary>
    public static readonly ProblemKind ForwardedRequest = new("forwarded-request", 403, "The request was forwarded",
        "The request has headers of a proxy or tunnel that whoever runs the service has not named as trusted, so it may come from anyone. Call the service directly, or have the proxy named.");

    /// <summary>403, another host's name.</summary>
    public static readonly ProblemKind ForeignHost = new("foreign-host", 403, "The request is for another host",
        "While it asks for no key, this service answers to localhost, 127.0.0.1 and [::1] only. A request under another name may come from a web page that had this name pointed here, so it is refused.");

    /// <summary>404.</summary>
    public static readonly ProblemKind NotFound = new("not-found", 404, "There is nothing here",
        "No route has this path, or nothing is stored under this id.");

    /// <summary>405.</summary>
    public static readonly ProblemKind MethodNotAllowed = new("method-not-allowed", 405, "The method is not allowed here",
        "The path exists, with other methods: the header Allow lists them.");

    /// <summary>412.</summary>
    public static readonly ProblemKind ChangedMeanwhile = new("changed-meanwhile", 412, "It is not what you have seen",
        "The header If-Match names an ETag that is not that of what is stored now: somebody else has saved in the meantime, or there is nothing yet. Or If-None-Match names what is stored, and with * anything. Nothing was saved. Read it again, and save on top of that.");

    /// <summary>413.</summary>
    public static readonly ProblemKind BodyTooLarge = new("body-too-large", 413, "The body is too large",
        "One record or one profile may have at most 1 MiB, unpacked. Many records at once go into an audit.");

    /// <summary>413, of many records.</summary>
    public static readonly ProblemKind AuditTooLong = new("audit-too-long", 413, "The audit is too long",
        "Up to 5,000 records and 16 MiB (unpacked) are answered at once, with an answer of up to 64 MiB. Post a longer audit to /v1/audits, where it is stored and judged later; then its length does not matter, up to 64 GiB, and a packed body may not grow more than 500-fold. Nothing was judged or stored.");

    /// <summary>409, no summary yet.</summary>
    public static readonly ProblemKind AuditNotCompleted = new("audit-not-completed", 409, "The audit is not completed",
        "There is a report once every record is judged. The audit itself says how far it is; one that was cancelled never has a report.");

    /// <summary>409, a key in use.</summary>
    public static readonly ProblemKind KeyInFlight = new("idempotency-key-in-flight", 409, "A request with this Idempotency-Key is still under way",
        "The same key was sent with a request that has not been answered yet. Wait for that answer, or send this one again a little later.");

    /// <summary>422, a key for two bodies.</summary>
    public static readonly ProblemKind KeyReused = new("idempotency-key-reused", 422, "The Idempotency-Key belongs to another request",
        "This key was sent before, with another body or query. Nothing was judged or stored. Take a new key for new content.");

    /// <summary>429.</summary>
    public static readonly ProblemKind TooManyRequests = new("too-many-requests", 429, "Too many requests",
        "The holder of this key, or this address, has made more requests than are allowed in a minute. Try again after the time in Retry-After; RateLimit-Policy and RateLimit say how many are allowed and how many are left. Many records at once go into an audit.");

    /// <summary>429, of audits.</summary>
    public static readonly ProblemKind TooManyAudits = new("too-many-audits", 429, "Too many audits at a time",
        "As many audits as one tenant may have at a time have not ended yet. Wait for one of them, or cancel one, and send this one again. Nothing was judged or stored.");

    /// <summary>429, of dear work.</summary>
    public static readonly ProblemKind TooMuchAtOnce = new("too-much-at-once", 429, "Too much dear work at a time",
        "This request takes much work, and as many such requests of your tenant as may wait are waiting already. Try again after the time in Retry-After. Nothing was judged or stored.");

    /// <summary>503, of dear work.</summary>
    public static readonly ProblemKind TooBusy = new("too-busy", 503, "The service is busy",
        "This request takes much work, and as much of that as may wait is waiting already. Single records are judged as ever. Try again after the time in Retry-After. Nothing was judged or stored.");

    /// <summary>504.</summary>
    public static readonly ProblemKind TooSlow = new("too-slow", 504, "The request took too long",
        "The body did not arrive in full in time, or the service could not finish in time. It is not known whether anything was stored: send the request again with the same Idempotency-Key, and nothing is stored twice.");

    /// <summary>415.</summary>
    public static readonly ProblemKind UnsupportedMediaType = new("unsupported-media-type", 415, "The media type is not supported",
        "The header Accept of the answer names what this route takes. One record or one profile: application/json in UTF-8. An audit: application/x-ndjson, application/json or text/csv in UTF-8. Either may be packed with gzip and with nothing else, as the header Accept-Encoding of the answer says.");

    /// <summary>422.</summary>
    public static readonly ProblemKind InvalidBody = new("invalid-body", 422, "The body has faults",
        "The body is JSON, and something in it is wrong: an unknown member, a missing required member, a value of the wrong type, none of the allowed values, or an impossible value. Each entry of errors names the place, and all faults are named at once. Nothing was judged or stored. A record that is merely incomplete is no problem: it is judged and told what is missing.");

    /// <summary>500.</summary>
    public static readonly ProblemKind InternalError = new("internal-error", 500, "The service failed",
        "The service met a fault of its own. Nothing can be concluded about the record: this is no pass. Give the traceId to whoever runs the service.");

    /// <summary>503.</summary>
    public static readonly ProblemKind StoreUnavailable = new("store-unavailable", 503, "The store cannot be used",
        "The service cannot read or write its store at the moment, or a newer version has upgraded the store and this instance has to be replaced, as detail then says. Nothing was stored. Try again after the time in Retry-After.");

    /// <summary>All kinds by name.</summary>
    public static FrozenDictionary<string, ProblemKind> ByName { get; } = new[]
    {
        UnreadableBody, InvalidParameter, BadRequest, ForwardedRequest, ForeignHost, NotFound, MethodNotAllowed, BodyTooLarge,
        UnsupportedMediaType, InvalidBody, InternalError, StoreUnavailable, AuditTooLong, KeyInFlight, KeyReused, AuditNotCompleted, TooSlow,
        KeyNeeded, ScopeMissing, TooManyRequests, TooManyAudits, TooMuchAtOnce, TooBusy, ChangedMeanwhile,
    }.ToFrozenDictionary(kind => kind.Name, StringComparer.Ordinal);

    /// <summary>The stable type URI, served by this service itself.</summary>
    public string Type => AddressOf(Name);

    /// <summary>The type URI of the kind with this name.</summary>
    public static string AddressOf(string name) => $"/problems/{name}";

    /// <summary>The kind that stands for a status which the framework gave.</summary>
    public static ProblemKind Of(int status) => status switch
    {
        401 => KeyNeeded,
        404 => NotFound,
        405 => MethodNotAllowed,
        413 => BodyTooLarge,
        415 => UnsupportedMediaType,
        504 => TooSlow,
        >= 500 => InternalError,
        _ => BadRequest,
    };
}
