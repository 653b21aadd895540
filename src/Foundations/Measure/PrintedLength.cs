namespace Nookwright.Measure;

/// <summary>A length taken apart for print, so that a drawing can set a proper fraction.</summary>
/// <param name="IsNegative">True when a minus sign goes in front.</param>
/// <param name="Feet">The feet, or null when none are shown.</param>
/// <param name="Whole">The whole inches or millimetres.</param>
/// <param name="Decimals">The digits after the point, or empty.</param>
/// <param name="Numerator">Above the fraction bar; 0 when there is no fraction.</param>
/// <param name="Denominator">Below the fraction bar; 1 when there is no fraction.</param>
/// <param name="Unit">The unit's text after the number, with its space when it wants one (<c> in</c>, <c>"</c>, <c> mm</c>), or empty.</param>
public sealed record PrintedLength(
    bool IsNegative,
    long? Feet,
    long Whole,
    string Decimals,
    int Numerator,
    int Denominator,
    string Unit
)
{
    /// <summary>True when a fraction is shown.</summary>
    public bool HasFraction => Numerator > 0;

    /// <summary>True when the whole number is shown: always, but for a bare fraction such as 3/4 in.</summary>
    public bool ShowsWhole => Whole > 0 || !HasFraction || Feet is not null;

    /// <summary>All that stands before the fraction: sign, feet and whole number.</summary>
    public string Lead
    {
        get
        {
            var sign = IsNegative ? "-" : "";
            var feet = Feet is null ? "" : $"{Feet}'-";
            var decimals = Decimals.Length == 0 ? "" : $".{Decimals}";
            return sign + feet + (ShowsWhole ? $"{Whole}{decimals}" : "");
        }
    }

    /// <summary>In one line: <c>23 3/4 in</c>, <c>3'-0"</c>, <c>603.5 mm</c>.</summary>
    public override string ToString()
    {
        var space = HasFraction && ShowsWhole ? " " : "";
        return Lead + space + (HasFraction ? $"{Numerator}/{Denominator}" : "") + Unit;
    }
}
