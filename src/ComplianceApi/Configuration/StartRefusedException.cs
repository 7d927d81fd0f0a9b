namespace ComplianceApi.Configuration;

/// <summary>The service does not start, for a reason that its operator can mend.</summary>
public sealed class StartRefusedException(string message) : Exception(message);
