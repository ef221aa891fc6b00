// All that a design's steps say, one sentence after another.
#ifndef TURNCLOTH_TESTS_MAKING_SENTENCES_HPP
#define TURNCLOTH_TESTS_MAKING_SENTENCES_HPP

#include <turncloth/making/work_plan.hpp>
#include <turncloth/making/work_words.hpp>

#include <string>
#include <vector>

inline std::vector<std::string> sentences(const turncloth::making<turncloth::inch>& d) {
    const auto plan = turncloth::work_plan_of(d);
    std::vector<std::string> all;
    for (const auto& g : plan.groups)
        for (const std::string& s : turncloth::sentences_of(plan, g))
            all.push_back(s);
    return all;
}

#endif
