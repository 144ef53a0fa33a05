// SPDX-License-Identifier: MIT
#include "plan/working.h"
