// SPDX-License-Identifier: MIT
#pragma once

#include "store/photo.h"

namespace matside {

/// A picture without what it tells beside itself: place, time, camera, names, comments, small copies.
struct Bare {
    QByteArray bytes;
    QString format; ///< "jpeg" or "png"
};

/// JPEG (ITU-T T.81, JFIF, CIPA DC-008): only the parts that make the picture stay, and which way up it is;
/// what follows its end goes too. PNG (ISO/IEC 15948): only the chunks that make the picture. Neither is
/// packed anew unless it has a colour profile other than sRGB, which names its maker: then it is brought to
/// sRGB. Other formats become PNG, upright. A bare picture made bare again is the same to the byte. Safe on
/// any thread.
[[nodiscard]] PhotoResult<Bare> bareOf(const QByteArray &bytes);

} // namespace matside
