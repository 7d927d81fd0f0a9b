namespace ComplianceApi.Configuration;

/// <summary>The settings of this service.</summary>
internal static class SettingNames
{
    /// <summary>The SQLite file.</summary>
    public const string StorePath = "Store:Path";

    /// <summary>The connection string of PostgreSQL, which goes before the file.</summary>
    public const string StoreConnectionString = "Store:ConnectionString";

    /// <summary>Asks for a store where there is none.</summary>
    public const string StoreCreate = "Store:Create";

    /// <summary>The file with the deployer's own limits.</summary>
    public const string Overrides = "Rules:Overrides";

    /// <summary>How many chunks of audits are judged at a time.</summary>
    public const string AuditWorkers = "Audits:Workers";

    /// <summary>After how long a chunk that its holder left is taken by another.</summary>
    public const string AuditLeaseSeconds = "Audits:LeaseSeconds";

    /// <summary>How many requests the holder of a key may make.</summary>
    public const string RequestsPerMinute = "Limits:RequestsPerMinute";

    /// <summary>How many audits of one tenant there may be at a time.</summary>
    public const string AuditsAtOnce = "Limits:AuditsAtOnce";

    /// <summary>How much dear work is done at a time.</summary>
    public const string DearAtOnce = "Limits:DearAtOnce";

    /// <summary>How much of it for one tenant.</summary>
    public const string DearAtOnceForTenant = "Limits:DearAtOnceForTenant";

    /// <summary>How long a request may take.</summary>
    public const string RequestSeconds = "Requests:Seconds";

    /// <summary>The addresses of proxies whose word is taken for whom they forward; empty: no proxy's.</summary>
    public const string TrustedProxies = "Proxy:Trusted";

    /// <summary>Has a key asked for on loopback too, whether one was ever made or not.</summary>
    public const string KeysRequired = "Keys:Required";

    /// <summary>Shows the page of the documents.</summary>
    public const string DocsEnabled = "Docs:Enabled";
}
