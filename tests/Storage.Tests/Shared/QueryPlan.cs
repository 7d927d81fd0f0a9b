using Dapper;

namespace Storage.Tests.Shared;

/// <summary>How the SQLite that travels with the program would go about a query, without statistics.</summary>
internal static class QueryPlan
{
    /// <summary>Its steps.</summary>
    public static Task<List<string>> OfAsync(Database database, string sql, object values) => database.ReadAsync(
        async connection => (await connection.QueryAsync<(long, long, long, string Detail)>("EXPLAIN QUERY PLAN " + sql, values)).Select(step => step.Detail).ToList(), default);
}
