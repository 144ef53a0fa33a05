// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QList>

#include <array>

/// A zip file written by hand after PKWARE's application note 6.3 (4.3.7, 4.3.12, 4.3.16), so that it can say
/// what no honest program would.
namespace zipmaker {

struct Part {
    QByteArray name;
    QByteArray bytes;
    quint32 mode = 0100644; ///< a Unix mode
    quint16 method = 0;     ///< 0 stored, 8 deflated
    quint16 flags = 0;      ///< bit 0: encrypted
    qint64 claimed = -1;    ///< unpacked size told in the headers, when it is not the true one
};

inline QByteArray little(quint64 value, int bytes)
{
    QByteArray text;
    for (int i = 0; i < bytes; ++i)
        text.append(static_cast<char>(value >> (8 * i)));
    return text;
}

inline quint32 crcOf(const QByteArray &bytes)
{
    quint32 crc = 0xFFFFFFFFU;
    for (const char byte : bytes) {
        crc ^= static_cast<unsigned char>(byte);
        for (int bit = 0; bit < 8; ++bit)
            crc = (crc >> 1U) ^ ((crc & 1U) != 0 ? 0xEDB88320U : 0U);
    }
    return ~crc;
}

/// A deflate stream (RFC 1951): Qt's own without its length, zlib's header and its checksum (RFC 1950).
inline QByteArray deflated(const QByteArray &bytes)
{
    const QByteArray stream = qCompress(bytes, 9);
    return stream.mid(6, stream.size() - 10);
}

inline QByteArray zip(const QList<Part> &parts)
{
    QByteArray file;
    QByteArray directory;
    for (const Part &part : parts) {
        const QByteArray packed = part.method == 8 ? deflated(part.bytes) : part.bytes;
        const auto size = static_cast<quint64>(part.claimed >= 0 ? part.claimed : part.bytes.size());
        const auto name = static_cast<quint64>(part.name.size());
        const QByteArray common = little(20, 2) + little(part.flags, 2) + little(part.method, 2) +
                                  little(0, 2) + little(33, 2) + little(crcOf(part.bytes), 4) +
                                  little(static_cast<quint64>(packed.size()), 4) + little(size, 4) +
                                  little(name, 2) + little(0, 2);
        directory += "PK\x01\x02" + little(0x0314, 2) + common + little(0, 2) + little(0, 2) + little(0, 2) +
                     little(quint64{part.mode} << 16U, 4) + little(static_cast<quint64>(file.size()), 4) +
                     part.name;
        file += "PK\x03\x04" + common + part.name + packed;
    }
    const auto count = static_cast<quint64>(parts.size());
    return file + directory + "PK\x05\x06" + little(0, 4) + little(count, 2) + little(count, 2) +
           little(static_cast<quint64>(directory.size()), 4) + little(static_cast<quint64>(file.size()), 4) +
           little(0, 2);
}

} // namespace zipmaker
