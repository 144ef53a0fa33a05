// SPDX-License-Identifier: MIT
#pragma once

#include "length/length.h"
#include "length/show.h"

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace matside {

/// A value named in a message: a length with the way it is rounded, a count, or a word.
struct Told {
    Length length;
    Round round = Round::Nearest;
};
using Argument = std::variant<Told, std::int64_t, Share, std::string>;

/// What an offer would write at a JSON pointer of the project file. `Remove` takes the key away.
struct Remove {
    friend bool operator==(Remove, Remove) = default;
};
using OfferValue = std::variant<Length, std::int64_t, bool, Share, std::string, Remove>;

/// One further edit of an offer: some remedies need two fields to change together.
struct Edit {
    std::string at;
    OfferValue value;
};

/// A remedy taken with one tap. `code` and `args` are worded by the app.
struct Offer {
    std::string code;
    std::string at;
    OfferValue value;
    std::vector<Argument> args;
    std::vector<Edit> also;
};

/// Something that cannot be made as it stands (or, as a caution, that can but should be looked at).
/// `code` is stable ("sent-over-field"); the app words it with `args`; `at` is a JSON pointer (RFC 6901).
struct Problem {
    std::string at;
    std::string code;
    std::vector<Argument> args;
    std::vector<Offer> offers;
};

} // namespace matside
