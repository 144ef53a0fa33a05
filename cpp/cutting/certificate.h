// SPDX-License-Identifier: MIT
#pragma once

#include "cutting/answer.h"

namespace matside::cutting {

/// True if `certificate` proves that every plan with strips across the cloth needs at least
/// `certificate.least` of it. Integers only; shares nothing with the solver. For the lengthwise proof hand
/// in the job turned: see `turnedJob`.
[[nodiscard]] bool checkCertificate(const Job &job, const Certificate &certificate);

/// The job seen along the selvage with `length` of cloth bought: widths and lengths change places, the usable
/// width becomes `length` less what is squared off. Strips along the cloth fit exactly if this one's strips
/// across fit `job.usable`.
[[nodiscard]] Job turnedJob(const Job &job, Ticks length);

} // namespace matside::cutting
