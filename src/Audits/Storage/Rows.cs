using System.Data.Common;
using System.Globalization;
using System.Text;

namespace Audits;

/// <summary>Writes many rows with few statements, in the one SQL that both databases read.</summary>
internal static class Rows
{
    private const int RowsAtOnce = 50;

    public static async Task InsertAsync(
        this DbTransaction transaction, string table, IReadOnlyList<string> columns, IEnumerable<object?[]> rows, CancellationToken cancel)
    {
        foreach (var part in rows.Chunk(RowsAtOnce))
        {
            await using var command = transaction.Connection!.CreateCommand();
            command.Transaction = transaction;
            var sql = new StringBuilder("INSERT INTO ").Append(table).Append(" (").AppendJoin(", ", columns).Append(") VALUES ");
            var number = 0;
            foreach (var (index, row) in part.Index())
            {
                sql.Append(index == 0 ? "(" : ", (");
                foreach (var (column, value) in row.Index())
                {
                    sql.Append(column == 0 ? "" : ", ").Append(command.Add(string.Create(CultureInfo.InvariantCulture, $"p{number++}"), value));
                }

                sql.Append(')');
            }

            command.CommandText = sql.ToString();
            await command.ExecuteNonQueryAsync(cancel);
        }
    }

    /// <summary>Gives a command a value; what stands for it in SQL comes back.</summary>
    public static string Add(this DbCommand command, string name, object? value)
    {
        var parameter = command.CreateParameter();
        parameter.ParameterName = name;
        parameter.Value = value ?? DBNull.Value;
        command.Parameters.Add(parameter);
        return $"@{name}";
    }
}
