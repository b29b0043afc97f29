package org.shopclime.balance;

/**
 * One thing that may bring heat into a room; every driver of the network belongs to exactly one.
 *
 * @param index place in {@link ShopModel#components()}
 * @param kind what it is
 * @param name what the owner calls it
 * @param room index of the room it belongs to
 * @param behindRoom index of the room behind it; -1 if none
 * @param area area without openings, m²; 0 where there is none
 * @param uFactor transmittance with the season's films, W/(m²·K); 0 where there is none
 */
public record Component(
    int index,
    ComponentKind kind,
    String name,
    int room,
    int behindRoom,
    double area,
    double uFactor) {}
