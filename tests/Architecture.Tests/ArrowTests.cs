using System.Reflection;
using System.Text.RegularExpressions;
using NetArchTest.Rules;

namespace Architecture.Tests;

/// <summary>
/// Which room may know which. A room is a namespace with those below it; an arrow that a table does not have is a failure. One table has the
/// rooms of the product, which are its projects, and one those inside the host.
/// </summary>
public sealed partial class ArrowTests
{
    /// <summary>Every room, and the rooms that it may know.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["Calculations"] = [],
        ["Wire"] = [],
        ["Findings"] = ["Wire"],
        ["Records"] = ["Wire"],
        ["Kernel"] = ["Findings", "Wire"],
        ["Visits"] = ["Calculations", "Findings", "Kernel", "Records", "Wire"],
        ["Rules"] = ["Calculations", "Findings", "Kernel", "Records", "Visits", "Wire"],
        ["Storage"] = ["Findings", "Records", "Visits", "Wire"],
        ["Checking"] = ["Findings", "Kernel", "Records", "Storage", "Visits", "Wire"],
        ["Jobs"] = ["Calculations", "Checking", "Findings", "Kernel", "Records", "Storage", "Visits", "Wire"],
        ["Wording"] = ["Findings", "Jobs", "Visits", "Wire"],
        ["SecondOpinion"] = ["Calculations", "Findings", "Records", "Wire"],
        ["ComplianceApi"] = ["Calculations", "Checking", "Findings", "Jobs", "Kernel", "Records", "Rules", "Storage", "Visits", "Wire", "Wording"],
    };

    /// <summary>Every room of the host, and the others that it may know. What stands in none of them (the program and its command line) may know all.</summary>
    private static readonly Dictionary<string, string[]> AllowedInHost = new(StringComparer.Ordinal)
    {
        ["ComplianceApi.Configuration"] = [],
        ["ComplianceApi.Problems"] = [],
        ["ComplianceApi.Guard"] = ["ComplianceApi.Configuration", "ComplianceApi.Problems"],
        ["ComplianceApi.Operations"] = ["ComplianceApi.Guard"],
        ["ComplianceApi.Api"] = ["ComplianceApi.Configuration", "ComplianceApi.Guard", "ComplianceApi.Operations", "ComplianceApi.Problems"],
        ["ComplianceApi.Pages"] = ["ComplianceApi.Api", "ComplianceApi.Guard", "ComplianceApi.Problems"],
        ["ComplianceApi.Hosting"] =
            ["ComplianceApi.Api", "ComplianceApi.Configuration", "ComplianceApi.Guard", "ComplianceApi.Operations", "ComplianceApi.Pages", "ComplianceApi.Problems"],
        ["ComplianceApi.Commands"] = ["ComplianceApi.Api", "ComplianceApi.Configuration", "ComplianceApi.Hosting", "ComplianceApi.Pages", "ComplianceApi.Problems"],
    };

    private static readonly Assembly Host = Assembly.Load("ComplianceApi");

    private static readonly IReadOnlyDictionary<string, Assembly> Assemblies = Allowed.Keys.ToDictionary(room => room, Assembly.Load, StringComparer.Ordinal);

    /// <summary>The projects of the product.</summary>
    internal static IEnumerable<string> Projects => Allowed.Keys;

    public static TheoryData<string> Rooms => [.. Projects];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_knows_only_what_the_table_says(string room)
    {
        var forbidden = Allowed.Keys.Except(Allowed[room], StringComparer.Ordinal).Where(other => other != room).ToArray();

        var result = Types.InAssembly(Assemblies[room]).ShouldNot().HaveDependencyOnAny(forbidden).GetResult();

        Assert.True(result.IsSuccessful, $"{room} may not know what these do: {string.Join(", ", result.FailingTypeNames ?? [])}");
    }

    /// <summary>An arrow that nobody needs any longer is taken out.</summary>
    [Theory]
    [MemberData(nameof(Rooms))]
    public void Every_arrow_of_the_table_is_used(string room) => Assert.All(Allowed[room], other =>
        Assert.True(Types.InAssembly(Assemblies[room]).That().HaveDependencyOnAny(other).GetTypes().Any(), $"{room} -> {other} is not used"));

    public static TheoryData<string> RoomsOfHost => [.. AllowedInHost.Keys];

    [Theory]
    [MemberData(nameof(RoomsOfHost))]
    public void A_room_of_the_host_knows_only_what_the_table_says(string room)
    {
        var forbidden = AllowedInHost.Keys.Except(AllowedInHost[room], StringComparer.Ordinal).Where(other => other != room).ToArray();

        var result = Types.InAssembly(Host).That().ResideInNamespace(room).ShouldNot().HaveDependencyOnAny(forbidden).GetResult();

        Assert.True(result.IsSuccessful, $"{room} may not know what these do: {string.Join(", ", result.FailingTypeNames ?? [])}");
    }

    /// <summary>An arrow that nobody needs any longer is taken out.</summary>
    [Theory]
    [MemberData(nameof(RoomsOfHost))]
    public void Every_arrow_of_the_host_is_used(string room) => Assert.All(AllowedInHost[room], other =>
        Assert.True(Types.InAssembly(Host).That().ResideInNamespace(room).And().HaveDependencyOnAny(other).GetTypes().Any(), $"{room} -> {other} is not used"));

    [Fact]
    public void Every_folder_of_the_host_is_a_room() => Assert.Equal(
        AllowedInHost.Keys.Order(StringComparer.Ordinal),
        Host.GetTypes().Select(type => type.Namespace ?? "").Where(space => space.StartsWith("ComplianceApi.", StringComparison.Ordinal))
            .Select(space => string.Join('.', space.Split('.')[..2])).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_namespace_is_its_folder(string room) => Assert.All(
        Assemblies[room].GetTypes().Where(type => !Made().IsMatch(type.FullName!)),
        type => Assert.True(type.Namespace is null || type.Namespace == room || type.Namespace.StartsWith(room + ".", StringComparison.Ordinal), type.FullName));

    // The analyzers run in the compiler and are no part of the product.
    [Fact]
    public void Every_project_of_the_product_is_a_room()
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "ComplianceApi.sln")))
            root = root.Parent!;
        var projects = Directory.EnumerateFiles(Path.Combine(root.FullName, "src"), "*.csproj", SearchOption.AllDirectories)
            .Append(Path.Combine(root.FullName, "rules", "Rules.csproj"))
            .Select(file => Path.GetFileNameWithoutExtension(file)!)
            .Where(project => project != "Analyzers");
        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), projects.Order(StringComparer.Ordinal));
    }

    /// <summary>What the compiler and its generators make.</summary>
    [GeneratedRegex(@"^(<|System\.|Microsoft\.|Program\b)|\+<", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Made();
}
