namespace ComplianceApi.Commands;

/// <summary>A folder that goes with what was put into it.</summary>
internal sealed class TemporaryFolder(string prefix) : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory(prefix);

    public string File(string name) => Path.Combine(_folder.FullName, name);

    public void Dispose() => _folder.Delete(recursive: true);
}
