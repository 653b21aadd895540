using System.ComponentModel.DataAnnotations;
using System.Text.Json;
using Nookwright.Records;

namespace Nookwright.Projects;

/// <summary>A round of the cutting plan that the maker has begun to cut from; it never moves, whatever is edited after.</summary>
public sealed record IssuedRound : Kept
{
    /// <summary>Which round: 1 for the first, later ones follow readings or edits.</summary>
    [Range(1, 1000)]
    public required int Round { get; init; }

    /// <summary>The day it was issued.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What the round adds and what it was asked for, with the sizes of that day, in the form of <c>plan.schema.json</c>.</summary>
    public required JsonElement Plan { get; init; }
}
