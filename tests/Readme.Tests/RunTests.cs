using Clients.Tests;
namespace Readme.Tests;

/// <summary>The command that runs the tests: how it ends.</summary>
public sealed class RunTests(FreshClone clone) : IClassFixture<FreshClone>
{
    [Fact]
    public async Task It_runs_a_project_of_a_fresh_clone_and_ends_with_the_sum()
    {
        Assert.Equal("bash tests/run", Assert.Single(ReadmeText.Of("sh tests")));

        var printed = await Shell.Run(clone.Folder, "bash tests/run Calculations.Tests");

        Assert.Matches("\n[1-9][0-9]* passed, 0 failed\n$", printed);
    }

    [Fact]
    public async Task A_project_that_there_is_not_is_a_failure() =>
        Assert.Equal("There is no project tests/Calculation.Tests.\n0 passed, 1 failed\n", await Shell.Run(clone.Folder, "bash tests/run Calculation.Tests || true"));
}
