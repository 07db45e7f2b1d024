// SPDX-License-Identifier: GPL-3.0-or-later
#include <base/csv.h>

namespace caprail {

CsvWriter::CsvWriter(std::initializer_list<std::string_view> head) {
    for (const std::string_view title : head) {
        text(title);
    }
    endLine();
}

CsvWriter& CsvWriter::text(std::string_view cell) {
    using namespace std::string_view_literals;
    return cell.find_first_of("=+-@\t\r"sv) == 0 ? plain("'" + std::string(cell)) : plain(cell);
}

CsvWriter& CsvWriter::number(std::int64_t cell) {
    return plain(std::to_string(cell));
}

CsvWriter& CsvWriter::plain(std::string_view cell) {
    if (m_isBegun) {
        m_text += ',';
    }
    m_isBegun = true;
    if (cell.find_first_of(",\"\r\n") == std::string_view::npos) { // section 2, rules 5 to 7
        m_text += cell;
        return *this;
    }
    m_text += '"';
    for (const char c : cell) {
        m_text += c;
        if (c == '"') {
            m_text += '"';
        }
    }
    m_text += '"';
    return *this;
}

void CsvWriter::endLine() {
    m_text += "\r\n";
    m_isBegun = false;
}

} // namespace caprail
