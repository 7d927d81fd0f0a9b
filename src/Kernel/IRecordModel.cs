using System.Reflection;

namespace Kernel;

/// <summary>All that has to be known of the records that are judged: which members they have, and how each is asked for.</summary>
public interface IRecordModel
{
    /// <summary>The fuels that a record can name, as it writes them.</summary>
    IReadOnlyList<string> Fuels { get; }

    /// <summary>JSON Pointer of the fuel.</summary>
    string FuelAt { get; }

    /// <summary>The modules that read a record and work with it: they decide what is judged, as the rules do.</summary>
    IReadOnlyList<Module> Modules { get; }

    /// <summary>Has a record a member at this JSON Pointer? An index may be any number or <c>*</c>.</summary>
    bool Has(string pointer);

    /// <summary>Unit (UCUM) of the number at a JSON Pointer; null where it has none.</summary>
    /// <exception cref="ArgumentException">No record has a member there.</exception>
    string? UnitAt(string pointer);

    /// <summary>How the member at a JSON Pointer is asked for.</summary>
    /// <exception cref="ArgumentException">No record has a member there.</exception>
    Question QuestionAt(string pointer);
}

/// <summary>How a member is asked for.</summary>
/// <param name="Place">Where the question stands among all: the smaller, the sooner it has to be asked.</param>
/// <param name="Ask">The question.</param>
/// <param name="WhileOnSite">Can it be answered on site only?</param>
public readonly record struct Question(int Place, string Ask, bool WhileOnSite);
