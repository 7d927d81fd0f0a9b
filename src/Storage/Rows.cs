using System.Data.Common;
using System.Globalization;

namespace Storage;

/// <summary>Writes many rows with one statement over and over, in the one SQL that both databases read.</summary>
internal static class Rows
{
    public static async Task InsertAsync(
        this DbTransaction transaction, string table, IReadOnlyList<string> columns, IEnumerable<object?[]> rows, CancellationToken cancel)
    {
        DbCommand? command = null;
        try
        {
            foreach (var part in rows.Chunk(DatabaseKind.RowsAtOnce(transaction)))
            {
                if (command?.Parameters.Count != part.Length * columns.Count)
                {
                    if (command is not null)
                        await command.DisposeAsync();
                    command = Insert(transaction, table, columns, part.Length);
                }

                foreach (var (number, value) in part.SelectMany(row => row).Index())
                    command.Parameters[number].Value = value ?? DBNull.Value;
                await command.ExecuteNonQueryAsync(cancel);
            }
        }
        finally
        {
            if (command is not null)
                await command.DisposeAsync();
        }
    }

    private static DbCommand Insert(DbTransaction transaction, string table, IReadOnlyList<string> columns, int rows)
    {
        var command = transaction.Connection!.CreateCommand();
        command.Transaction = transaction;
        var values = Enumerable.Range(0, rows).Select(row => $"({string.Join(", ", columns.Index().Select(column => command.Add(string.Create(CultureInfo.InvariantCulture, $"p{row * columns.Count + column.Index}"), null)))})");
        command.CommandText = $"INSERT INTO {table} ({string.Join(", ", columns)}) VALUES {string.Join(", ", values)}";
        return command;
    }

    /// <summary>Gives a command a value; what stands for it in SQL comes back.</summary>
    public static string Add(this DbCommand command, string name, object? value)
    {
        // With its mark: SQLite would try one mark after the other, at each execution anew.
        var parameter = command.CreateParameter();
        parameter.ParameterName = $"@{name}";
        parameter.Value = value ?? DBNull.Value;
        command.Parameters.Add(parameter);
        return parameter.ParameterName;
    }
}
