namespace Nookwright.Measure;

/// <summary>A name a formula needs, and where in the text it first stands.</summary>
/// <param name="Name">The name.</param>
/// <param name="Column">Its first sign, counted from 1.</param>
public readonly record struct FormulaName(string Name, int Column);
