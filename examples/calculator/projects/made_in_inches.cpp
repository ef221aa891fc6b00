#include "made.hpp"

calculator::json calculator::made(const asked_project& asked, const turncloth::finished_size<turncloth::inch>& size) {
    return made_in(asked, size);
}
