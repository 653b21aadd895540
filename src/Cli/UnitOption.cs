using System.CommandLine;
using Nookwright.Measure;

namespace Nookwright.Cli;

/// <summary>The option <c>--units</c>: inches, the default, or millimetres, in short or in full.</summary>
public sealed class UnitOption : Option<string>
{
    /// <summary>The option, described.</summary>
    public UnitOption(string description)
        : base("--units")
    {
        Description = description;
        DefaultValueFactory = _ => "in";
        this.AcceptOnlyFromAmong("in", "inches", "mm", "millimetres");
        HelpName = "in|mm";
    }

    /// <summary>The unit asked for.</summary>
    public LengthUnit Of(ParseResult parsed) =>
        parsed.GetValue(this) is "mm" or "millimetres" ? LengthUnit.Millimetres : LengthUnit.Inches;
}
