// SPDX-License-Identifier: MIT
#include "project/readlaid.h"

namespace matside {

void readTable(Fields &fields, std::optional<Table> &table)
{
    const Json *object = fields.object("table");
    if (!object)
        return;
    Table read;
    Fields inner(*object, fields.at("table"), fields.system(), fields.problems());
    inner.length("length", read.length);
    inner.length("width", read.width);
    inner.length("diameter", read.diameter);
    inner.length("leaf", read.leaf);
    inner.flag("leafIn", read.leafIn);
    read.rest = inner.rest();
    const bool whole = read.diameter ? !read.length && !read.width : read.length && read.width;
    if (!whole)
        fields.wrong("table", "table-not-whole", {}, {{"take-away", fields.at("table"), Remove{}, {}, {}}});
    else
        table = std::move(read);
}

} // namespace matside
