using System.Net;
using System.Net.Sockets;
using Clients.Tests;

namespace Readme.Tests;

/// <summary>What a newcomer has: a clone of the commit under test in a folder of its own, and nothing built.</summary>
public sealed class FreshClone : IAsyncLifetime
{
    private readonly DirectoryInfo _parent = Directory.CreateTempSubdirectory("clone-");

    public string Folder => Path.Combine(_parent.FullName, "clone");

    public async Task InitializeAsync() => await Shell.Run(_parent.FullName, $"git clone --quiet \"$REPOSITORY\" '{Folder}'");

    public Task DisposeAsync()
    {
        _parent.Delete(recursive: true);
        return Task.CompletedTask;
    }

    /// <summary>A port that is free on this machine, so that a service somebody left at the usual one answers nothing here.</summary>
    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
