using System.Buffers.Binary;
using System.Runtime.InteropServices;
using Microsoft.Data.Sqlite;

namespace Storage;

/// <summary>What is asked of a SQLite file beside its SQL.</summary>
internal static class SqliteFile
{
    /// <summary>
    /// Where the header of a file (sqlite.org/fileformat2.html, 1.3) has the application id, and what a backup has there. In the header,
    /// since an old log that lies beside a file changes what SQL reads from it.
    /// </summary>
    private const int ApplicationIdAt = 68;
    private const int BackupMark = 0x4342414B;

    /// <summary>SQLITE_FCNTL_HAS_MOVED: was the file that a connection has open renamed, deleted or replaced? By its inode.</summary>
    private const int HasMovedControl = 20;

    public static string MarkAsBackup { get; } = $"PRAGMA application_id = {BackupMark}";

    public static string MarkAsStore { get; } = "PRAGMA application_id = 0";

    public static string ConnectionString(string file, SqliteOpenMode mode, bool isPooled = false, int patience = 30) =>
        new SqliteConnectionStringBuilder { DataSource = file, Mode = mode, Pooling = isPooled, DefaultTimeout = patience }.ToString();

    public static SqliteConnection Open(string file, SqliteOpenMode mode, int patience = 30)
    {
        var connection = new SqliteConnection(ConnectionString(file, mode, patience: patience));
        connection.Open();
        return connection;
    }

    /// <summary>Is it a backup that was not restored? Asked before this process opens the file: closing it here drops the process's locks on it.</summary>
    public static bool IsBackup(string file)
    {
        Span<byte> header = stackalloc byte[ApplicationIdAt + sizeof(int)];
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return stream.ReadAtLeast(header, header.Length, throwOnEndOfStream: false) == header.Length
            && BinaryPrimitives.ReadInt32BigEndian(header[ApplicationIdAt..]) == BackupMark;
    }

    /// <summary>Is what a connection has open no longer what its path leads to? Never, where the system does not let an open file go.</summary>
    public static bool HasMoved(SqliteConnection connection)
    {
        var answer = 0;
        return FileControl(connection.Handle!.DangerousGetHandle(), IntPtr.Zero, HasMovedControl, ref answer) == 0 && answer != 0;
    }

    /// <summary>A file with its log and the index of that.</summary>
    public static IEnumerable<string> WithItsLog(string file) => [file, .. LogOf(file)];

    /// <summary>Its log and the index of that.</summary>
    public static string[] LogOf(string file) => [file + "-wal", file + "-shm"];

    [DllImport("e_sqlite3", EntryPoint = "sqlite3_file_control", ExactSpelling = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories | DllImportSearchPath.AssemblyDirectory)]
    private static extern int FileControl(IntPtr database, IntPtr name, int control, ref int answer);
}
