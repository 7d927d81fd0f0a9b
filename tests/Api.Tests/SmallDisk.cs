using System.Diagnostics;

namespace Api.Tests;

/// <summary>A file system in memory of a few megabytes, so that it can fill up. Only root may mount one.</summary>
internal sealed class SmallDisk : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("disk-");

    public SmallDisk(int megabytes)
    {
        if (!Run("mount", "-t", "tmpfs", "-o", $"size={megabytes}m", "tmpfs", Folder))
            throw new InvalidOperationException("A small file system cannot be mounted: root on Linux is needed.");
    }

    public static bool CanBeMounted { get; } = OperatingSystem.IsLinux() && TryMount();

    public string Folder => _folder.FullName;

    public void Dispose()
    {
        Run("umount", "-l", Folder);
        _folder.Delete(recursive: true);
    }

    private static bool TryMount()
    {
        try
        {
            using var disk = new SmallDisk(1);
            return true;
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }

    internal static bool Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, UseShellExecute = false })!;
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}

/// <summary>A file that nobody may write, root neither, until it is disposed of.</summary>
internal sealed class ReadOnlyFile : IDisposable
{
    private readonly string _file;

    public ReadOnlyFile(string file)
    {
        _file = file;
        if (!SmallDisk.Run("mount", "--bind", file, file) || !SmallDisk.Run("mount", "-o", "remount,bind,ro", file))
            throw new InvalidOperationException("A file cannot be mounted for reading alone: root on Linux is needed.");
    }

    public void Dispose() => SmallDisk.Run("umount", "-l", _file);
}

/// <summary>Runs where a small file system can be mounted. Elsewhere it is reported as skipped; in CI it fails.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class SmallDiskFactAttribute : FactAttribute
{
    public SmallDiskFactAttribute()
    {
        if (!SmallDisk.CanBeMounted && Environment.GetEnvironmentVariable("CI") != "true")
            Skip = "No small file system can be mounted (root on Linux is needed).";
    }
}
