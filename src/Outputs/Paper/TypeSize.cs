namespace Nookwright.Paper;

/// <summary>Sizes of type on paper: the em's height in millimetres. Nothing is set smaller than 3 mm, about 8 1/2 points.</summary>
internal static class TypeSize
{
    /// <summary>Page heads and feet.</summary>
    public const double Furniture = 3.0;

    /// <summary>Tables.</summary>
    public const double Table = 3.2;

    /// <summary>Running text.</summary>
    public const double Body = 3.6;

    /// <summary>Heads inside a page.</summary>
    public const double Head = 4.6;

    /// <summary>A page's title.</summary>
    public const double Title = 7;

    /// <summary>From baseline to baseline, as a share of the size.</summary>
    public const double Leading = 1.36;

    /// <summary>From the top of a line to its baseline, as a share of the size.</summary>
    public const double Ascent = 0.97;
}
