// SPDX-License-Identifier: MIT
#pragma once

#include "project/fields.h"

namespace matside::spelling {

inline constexpr std::array system{Spelling<System>{"inch", System::Inch},
                                   Spelling<System>{"metric", System::Metric}};
inline constexpr std::array hand{Spelling<Hand>{"right", Hand::Right}, Spelling<Hand>{"left", Hand::Left}};
inline constexpr std::array build{Spelling<Build>{"reversible", Build::Reversible},
                                  Spelling<Build>{"clean-back", Build::CleanBack}};
inline constexpr std::array cleanBack{Spelling<CleanBack>{"layered", CleanBack::Layered},
                                      Spelling<CleanBack>{"bagged", CleanBack::Bagged}};
inline constexpr std::array edgeKind{Spelling<EdgeKind>{"bound", EdgeKind::Bound},
                                     Spelling<EdgeKind>{"framed", EdgeKind::Framed},
                                     Spelling<EdgeKind>{"bagged", EdgeKind::Bagged}};
inline constexpr std::array binding{Spelling<Binding>{"double", Binding::Double},
                                    Spelling<Binding>{"single", Binding::Single}};
inline constexpr std::array sewn{Spelling<Sewn>{"hand", Sewn::Hand},
                                 Spelling<Sewn>{"machine", Sewn::Machine}};
inline constexpr std::array cornerKind{Spelling<CornerKind>{"square", CornerKind::Square},
                                       Spelling<CornerKind>{"rounded", CornerKind::Rounded},
                                       Spelling<CornerKind>{"circle", CornerKind::Round},
                                       Spelling<CornerKind>{"scalloped", CornerKind::Scalloped}};
inline constexpr std::array hoopKind{Spelling<HoopKind>{"ring", HoopKind::Ring},
                                     Spelling<HoopKind>{"magnetic", HoopKind::Magnetic}};
inline constexpr std::array role{
    Spelling<ClothRole>{"front", ClothRole::Front},
    Spelling<ClothRole>{"back", ClothRole::Back},
    Spelling<ClothRole>{"batting", ClothRole::Batting},
    Spelling<ClothRole>{"patch", ClothRole::Patch},
    Spelling<ClothRole>{"web", ClothRole::Web},
    Spelling<ClothRole>{"sashing-front", ClothRole::SashingFront},
    Spelling<ClothRole>{"sashing-back", ClothRole::SashingBack},
    Spelling<ClothRole>{"binding", ClothRole::Binding},
};
inline constexpr std::array blockState{
    Spelling<BlockState>{"stitched", BlockState::Stitched},
    Spelling<BlockState>{"trimmed", BlockState::Trimmed},
    Spelling<BlockState>{"joined", BlockState::Joined},
    Spelling<BlockState>{"spoiled", BlockState::Spoiled},
    Spelling<BlockState>{"lost", BlockState::Lost},
};

inline constexpr std::array mendedBy{Spelling<MendedBy>{"seam", MendedBy::Seam},
                                     Spelling<MendedBy>{"strip", MendedBy::Strip}};

/// The trial is either still to come (no key) or put off.
inline constexpr std::array trial{Spelling<bool>{"put-off", true}};

template <class E, std::size_t N>
[[nodiscard]] std::string wordFor(const std::array<Spelling<E>, N> &spellings, E value)
{
    for (const Spelling<E> &spelling : spellings)
        if (spelling.value == value)
            return std::string(spelling.word);
    return std::string(spellings.front().word);
}

} // namespace matside::spelling
