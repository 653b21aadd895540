namespace Nookwright.Planning;

/// <summary>A setting that is visited before a cut, as one number: plain when that cut may follow at once, else marked.</summary>
/// <remarks>Where a free cut comes between, the two cannot be made in one visit even at one setting.</remarks>
internal static class Before
{
    /// <summary>The same setting with a free cut between.</summary>
    public static int Through(int before) => before < 0 ? before : ~before;

    /// <summary>The setting.</summary>
    public static int Setting(int before) => before < 0 ? ~before : before;

    /// <summary>True when a free cut comes between.</summary>
    public static bool IsThrough(int before) => before < 0;
}
