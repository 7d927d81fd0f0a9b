using System.Reflection;
using Calculations;
using Kernel;
using Records;
using Records.Members;
using Records.Metadata;
using Wire;

namespace Visits;

/// <summary>The service record as the kernel sees it.</summary>
public sealed class RecordModel : IRecordModel
{
    // What needs the appliance running, then what needs access, then what can be seen on site, then paper; within each as the record is laid out.
    private static readonly Dictionary<RecordMember, int> Places = RecordMembers.All.Index().OrderBy(member => member.Item.While).ThenBy(member => member.Index)
        .Select((member, place) => (member.Item, place)).ToDictionary(pair => pair.Item, pair => pair.place);

    private RecordModel()
    {
    }

    /// <summary>The one model.</summary>
    public static RecordModel Instance { get; } = new();

    /// <inheritdoc />
    public IReadOnlyList<string> Fuels { get; } = WireNames.OfValues(typeof(Fuel));

    /// <inheritdoc />
    public string FuelAt => "/appliance/fuel";

    /// <inheritdoc />
    public IReadOnlyList<Module> Modules { get; } = [typeof(RecordModel).Module, typeof(ServiceRecord).Module, typeof(GasFamily).Module];

    /// <inheritdoc />
    public bool Has(string pointer) => RecordMembers.Find(pointer) is not null;

    /// <inheritdoc />
    public string? UnitAt(string pointer) => RecordMembers.At(pointer).Unit;

    /// <inheritdoc />
    public Question QuestionAt(string pointer)
    {
        var member = RecordMembers.At(pointer);
        return new Question(Places[member], member.Ask, member.While != While.Paper);
    }
}
