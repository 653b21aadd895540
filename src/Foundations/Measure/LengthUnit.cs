namespace Nookwright.Measure;

/// <summary>The unit of a bare number, and of what people are shown.</summary>
public enum LengthUnit
{
    /// <summary>International inches.</summary>
    Inches,

    /// <summary>Millimetres.</summary>
    Millimetres,
}
