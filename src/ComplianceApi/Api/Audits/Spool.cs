namespace ComplianceApi.Api.Audits;

/// <summary>Bytes that are laid aside on this machine's disk, in a file that goes when it is closed.</summary>
internal static class Spool
{
    /// <summary>A new one, empty.</summary>
    public static FileStream Create() => new(
        Path.Combine(Path.GetTempPath(), Path.GetRandomFileName()),
        new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.ReadWrite, BufferSize = 0, Options = FileOptions.DeleteOnClose | FileOptions.Asynchronous });

    /// <summary>Writes to one. What fails here is this machine's disk, and not the caller's connection.</summary>
    /// <exception cref="NoRoomException">It cannot be written.</exception>
    public static async Task WriteAsync(FileStream file, ReadOnlyMemory<byte> part, CancellationToken cancel)
    {
        try
        {
            await file.WriteAsync(part, cancel);
        }
        catch (IOException fault)
        {
            throw new NoRoomException(fault);
        }
    }
}

/// <summary>Something cannot be laid aside on this machine's disk.</summary>
internal sealed class NoRoomException(IOException cause) : Exception(cause.Message, cause);
