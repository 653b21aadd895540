using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>The wood a node offers one more child: what a spot is judged by before anything is changed.</summary>
/// <param name="Axis">The axis children lie along.</param>
/// <param name="Room">What is left along it for one more.</param>
/// <param name="Across">The size across.</param>
/// <param name="Setting">The setting that gave the size across, or -1.</param>
/// <param name="OpenAlong">True when a margin, or a trusted edge, lies beyond the room.</param>
/// <param name="OpenAcross">The same across.</param>
/// <param name="IsFirst">True when there is no child yet.</param>
internal readonly record struct Span(
    SheetAxis Axis,
    long Room,
    long Across,
    int Setting,
    bool OpenAlong,
    bool OpenAcross,
    bool IsFirst
)
{
    /// <summary>What a node offers along its axis.</summary>
    public static Span Of(Node node, long kerf)
    {
        var beyond = node.Rest is null ? 0 : node.Along; // A node with a rest is full.
        var room = node.Along - node.Used - (node.Children.Count > 0 ? kerf : 0) - beyond;
        return new(
            node.Axis,
            room,
            node.Across,
            SettingAcross(node),
            node.OpenAlong,
            node.OpenAcross,
            node.Children.Count == 0
        );
    }

    /// <summary>What an empty node offers laid the other way.</summary>
    public static Span Turned(Node node) =>
        new(node.Axis.Other(), node.Across, node.Along, -1, node.OpenAcross, node.OpenAlong, true);

    /// <summary>What lies beyond a node's children, cut the other way.</summary>
    public static Span Beyond(Node node, long gap) =>
        new(node.Axis.Other(), node.Across, node.Along - node.Used - gap, -1, node.OpenAcross, node.OpenAlong, true);

    private static int SettingAcross(Node node) => node.IsRest ? -1 : node.Setting;
}
