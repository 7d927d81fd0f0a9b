using System.Reflection;
using Records.Metadata;
using Wire;

namespace Records.Members;

/// <summary>One member of the service record at one place in it: all that its attributes say.</summary>
public sealed class RecordMember
{
    internal RecordMember(PropertyInfo property, RecordMember? parent)
    {
        Property = property;
        Name = WireNames.OfMember(property.Name);
        Pattern = parent is null ? "/" + Name : parent.Pattern + (parent.IsList ? "/*/" : "/") + Name;
        var declared = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        IsList = declared.IsGenericType && declared.GetGenericTypeDefinition() == typeof(IReadOnlyList<>);
        ClrType = IsList ? declared.GetGenericArguments()[0] : declared;
        IsRequired = property.IsDefined(typeof(System.Runtime.CompilerServices.RequiredMemberAttribute));
        AllowedValues = ClrType.IsEnum ? WireNames.OfValues(ClrType) : [];
        var quantity = property.GetCustomAttribute<QuantityAttribute>();
        Unit = quantity?.Unit;
        Minimum = (decimal?)quantity?.Minimum;
        Maximum = (decimal?)quantity?.Maximum;
        var text = property.GetCustomAttribute<TextAttribute>();
        MaxLength = text?.MaxLength;
        MayBeEmpty = text?.MayBeEmpty ?? false;
        MaxItems = property.GetCustomAttribute<ItemsAttribute>()?.Max;
        var ask = property.GetCustomAttribute<AskAttribute>();
        Ask = ask?.Question ?? throw new InvalidOperationException($"{Pattern} has no question.");
        While = ask.Answered;
        Class = property.GetCustomAttribute<ClassAttribute>()?.Of ?? throw new InvalidOperationException($"{Pattern} has no class.");
        Section = ClrType.IsClass && ClrType != typeof(string) ? new Section(ClrType, this) : null;
    }

    /// <summary>Name in JSON, such as <c>coPpm</c>.</summary>
    public string Name { get; }

    /// <summary>JSON Pointer with <c>*</c> for every list index, such as <c>/combustion/readings/*/coPpm</c>.</summary>
    public string Pattern { get; }

    /// <summary>Type of the value; of a list, the type of its items. Never a <see cref="Nullable{T}"/>.</summary>
    public Type ClrType { get; }

    /// <summary>Whether the value is a list.</summary>
    public bool IsList { get; }

    /// <summary>Whether no record can be read without it.</summary>
    public bool IsRequired { get; }

    /// <summary>Whether it (or each item of it) is an object with members of its own.</summary>
    public bool IsSection => Section is not null;

    /// <summary>UCUM unit of a number; else null.</summary>
    public string? Unit { get; }

    /// <summary>Lowest possible number; null when it is no number.</summary>
    public decimal? Minimum { get; }

    /// <summary>Highest possible number; null when it is no number.</summary>
    public decimal? Maximum { get; }

    /// <summary>Greatest length of a text; null when it is no text.</summary>
    public int? MaxLength { get; }

    /// <summary>Whether an empty text means something here; elsewhere it is refused, for absent is how "not recorded" is said.</summary>
    public bool MayBeEmpty { get; }

    /// <summary>Greatest number of items; null when it is no list.</summary>
    public int? MaxItems { get; }

    /// <summary>Question by which the engineer is asked for it.</summary>
    public string Ask { get; }

    /// <summary>When that question can still be answered.</summary>
    public While While { get; }

    /// <summary>What it is to a judgement.</summary>
    public MemberClass Class { get; }

    /// <summary>Wire names of all allowed values, in the order of their declaration; empty when it is no enumeration.</summary>
    public IReadOnlyList<string> AllowedValues { get; }

    /// <summary>Members of the section, or of each item; empty for plain values.</summary>
    public IReadOnlyList<RecordMember> Members => Section?.Members ?? [];

    internal Section? Section { get; }

    internal PropertyInfo Property { get; }
}
