// SPDX-License-Identifier: MIT
#pragma once

#include "workroom.h"

namespace workroom {

/// The machine and the big table: strips to blocks, rows to a piece, its back and its edge.
class Sewing {
public:
    Sewing(const Room &room, Shelf &shelf) : m_room(room), m_shelf(shelf) {}

    void joinLong(const Json &step, std::int64_t count);
    /// One short join between blocks, or one long join between rows.
    void join(const Json &step, std::int64_t count);
    void row(const Json &step, std::int64_t count);
    /// Any step that takes rows lays out the whole piece.
    void edge(const Json &step, std::int64_t count);
    /// Two sides of a framed edge; the first time all its strips and its batting are taken up.
    void frame(const Json &step, std::int64_t count);
    void bind(const Json &step, std::int64_t count);

    /// Compares the finished work with the plan's other figures.
    void compare(const Json &plan) const;

private:
    /// What a strip adds between the raw edges of two blocks: less than nothing where it lies inside them.
    [[nodiscard]] Length between(const Rectangle &strip) const;
    [[nodiscard]] Rectangle piece(const Shelf::Hand &hand) const;
    void fold(const Json &step, const Rectangle &front, const Rectangle &back);
    void compareFolds(const Json &plan) const;
    void compareJoins() const;
    void compareBacking(const Json &plan) const;
    void compareFrame(const Json &plan) const;
    /// These strips yield two of each length, and one strip fewer would not.
    void justYield(const std::vector<Rectangle> &strips, Length spare, Length joinSeam) const;
    void compareBias(const Json &plan) const;
    void compareBinding(const Json &plan) const;

    const Room &m_room;
    Shelf &m_shelf;
    std::vector<Length> m_passes;                       ///< how far each fold passes its seam
    std::map<std::string, std::vector<Length>> m_joins; ///< a face's long joins
    std::vector<Length> m_centres;                      ///< of the short sashings in a row
    std::vector<Length> m_marks;                        ///< where the long joins want them
    std::vector<Rectangle> m_bindingStrips;             ///< of one piece
    std::vector<Rectangle> m_frameFront;                ///< of one piece
    std::vector<Rectangle> m_frameBack;
    std::vector<Rectangle> m_filler;
    std::vector<Length> m_frameLengths; ///< left and right, then top and bottom
    Rectangle m_piece;
    Rectangle m_rows;    ///< squared the first time
    Rectangle m_squared; ///< squared the last time
    int m_squarings = 0;
    Rectangle m_backing;
    Length m_seam;
    bool m_bagged = false;
    bool m_turned = false; ///< some back strip was folded under
};

} // namespace workroom
