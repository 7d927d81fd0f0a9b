using Clients.Tests;
namespace Readme.Tests;

/// <summary>The commands that run tests and measure, by somebody who may not install anything, on a machine with next to nothing.</summary>
public sealed class BareMachineTests(FreshClone clone) : IClassFixture<FreshClone>
{
    /// <summary>What the script itself takes from the system, and no more.</summary>
    private static readonly string[] Basics = ["bash", "dirname", "id"];

    /// <summary>PostgreSQL is looked for in its folder and not on the path, so a machine that has it does not miss it.</summary>
    [Fact]
    public async Task It_names_everything_that_is_missing_before_it_builds()
    {
        Assert.Matches(
            @"^Missing: curl git nodejs npm (postgresql )?chromium \(names of Debian's packages\)\. Without them: tests/run NAME\.\.\., with the names of projects under tests\.\n0 passed, 1 failed\n$",
            await Run("tests/run", "dotnet"));
        Assert.Empty(Directory.EnumerateDirectories(clone.Folder, "obj", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task Without_the_SDK_it_says_so() => Assert.Equal("Missing: the .NET 10 SDK (dotnet on the PATH).\n0 passed, 1 failed\n", await Run("tests/run"));

    [Theory]
    [InlineData("tests/Benchmarks/http-load", "wrk")]
    [InlineData("tests/Benchmarks/overload", "wrk")]
    [InlineData("tests/Benchmarks/cold-start", "curl")]
    [InlineData("tests/long/scale", "curl")]
    public async Task What_measures_does_not_begin_without_its_tools(string script, string missing)
    {
        string[] present = ["dotnet", "gzip", "mktemp", "cat", "rm", .. missing == "curl" ? [] : (string[])["curl"]];

        Assert.EndsWith($" needs {missing}, which this machine does not have.\n", await Run(script, present), StringComparison.Ordinal);
    }

    private Task<string> Run(string script, params string[] programs)
    {
        var links = string.Join('\n', Basics.Concat(programs).Select(name => $"ln -s \"$(command -v {name})\" \"$path/{name}\""));
        return Shell.Run(clone.Folder, $"unset CHROMIUM; path=$(mktemp -d)\n{links}\nPATH=$path bash {script} || true\nrm -r \"$path\"");
    }
}
