using Nookwright.Measure;

namespace Nookwright.Sawing;

/// <summary>What the virtual saw says of a plan.</summary>
/// <param name="Accepted">True when every cut can be made and every part comes out right.</param>
/// <param name="Why">The first thing that cannot be done, as a sentence; null when there is none.</param>
/// <param name="Cut">The number of the cut it happened at; null when it is none, or about the plan as a whole.</param>
/// <param name="Repeats">Dimensions visited more often than once in a round: allowed, but worth knowing.</param>
public sealed record SawVerdict(bool Accepted, string? Why, int? Cut, IReadOnlyList<Length> Repeats);
