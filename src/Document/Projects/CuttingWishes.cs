using System.ComponentModel.DataAnnotations;
using System.Text.Json;
using Nookwright.Records;

namespace Nookwright.Projects;

/// <summary>What the maker wishes of the cutting plan, beyond what follows from the parts.</summary>
public sealed record CuttingWishes : Kept
{
    /// <summary>How many visits beyond the fewest the maker accepts for fewer sheets; 0 for the fewest visits.</summary>
    [Range(0, 1000)]
    public int ExtraVisits { get; init; }

    /// <summary>True to finish one piece's parts before the next piece's are begun: fewer loose pieces about, more visits.</summary>
    public bool BoxByBox { get; init; }

    /// <summary>Parts that must come from one stock: that one beautiful sheet, or that offcut.</summary>
    public IReadOnlyList<Pin> Pins { get; init; } = [];

    /// <summary>Parts that must not share a strip.</summary>
    public IReadOnlyList<ApartWish> Apart { get; init; } = [];

    /// <summary>Sheets that are kept as they were planned.</summary>
    public IReadOnlyList<SheetPin> Sheets { get; init; } = [];
}

/// <summary>A sheet that is kept as it was planned: these parts at these places, by these cuts, and nothing else from it.</summary>
public sealed record SheetPin : Kept
{
    /// <summary>The pin's id.</summary>
    public required string Id { get; init; }

    /// <summary>The sheet alone and what it was asked for, with the sizes of that day, in the form of <c>plan.schema.json</c>.</summary>
    public required JsonElement Plan { get; init; }
}

/// <summary>Parts that must come from one stock.</summary>
public sealed record Pin : Kept
{
    /// <summary>The pin's id.</summary>
    public required string Id { get; init; }

    /// <summary>The id of the stock size they come from; give a sheet or an offcut that is meant by itself one of its own.</summary>
    [RefersTo("shop/sheets/stock")]
    public required string From { get; init; }

    /// <summary>Panel ids.</summary>
    public IReadOnlyList<string> Panels { get; init; } = [];
}

/// <summary>Parts that must not share a strip, so that their figure, or the errors of their strip, are unlike.</summary>
public sealed record ApartWish : Kept
{
    /// <summary>The wish's id.</summary>
    public required string Id { get; init; }

    /// <summary>Panel ids; no two of them come from one strip.</summary>
    public IReadOnlyList<string> Panels { get; init; } = [];
}
